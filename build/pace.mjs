// Measures the calls of saltbite.mjs in Node, for `go run ./build bench`:
//
//     node pace.mjs PATH-OF-SALTBITE.MJS JOB
//
// prints the figures in the text form of a set of fields: milliseconds for
// `answer`, `find` and `long`, the names of the `answers`, the `slowest` field.
import { pathToFileURL } from 'node:url'

const [path, job] = process.argv.slice(2)
const { open } = await import(pathToFileURL(path).href)
const bench = await open()
const fields = Object.fromEntries(new URLSearchParams(job))
const misspelt = ['yelow bras', 'sterlin', 'nikel silver', 'C26000', '30% zinc brass', 'neusilber']

/** The median of some runs, after as many to warm up. */
async function median(runs, call) {
  const times = []
  for (let i = 0; i < 2 * runs; i++) {
    const start = performance.now()
    await call(i)
    if (i >= runs) times.push(performance.now() - start)
  }
  return times.sort((a, b) => a - b)[runs >> 1]
}

const reply = await bench.answer(fields)
const answer = await median(300, () => bench.answer(fields))
const find = await median(300, (i) => bench.find(misspelt[i % misspelt.length]))

let long = 0
let slowest = ''
const name = 'a1 .é%'
const hundred = name.repeat(Math.ceil(100_000 / new TextEncoder().encode(name).length))
for (const field of [...Object.keys(fields), 'current', 'time', 'area', 'saltInHand', 'no such field']) {
  const took = await median(3, () => bench.answer({ ...fields, [field]: hundred }))
  if (took > long) [long, slowest] = [took, field]
}

console.log(String(new URLSearchParams({ answer, find, long, slowest, answers: Object.keys(reply.answers).join(' ') })))
bench.close()
