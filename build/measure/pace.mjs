// Measures the calls of saltbite.mjs in Node, for `go run ./build bench`:
//
//     node pace.mjs PATH-OF-SALTBITE.MJS JOBS
//
// prints the figures in the text form of a set of fields: milliseconds for
// `answer`, `find`, `draw` and `long`, and the `slowest` field. The jobs stand in lines.
import { pathToFileURL } from 'node:url'

const [path, text] = process.argv.slice(2)
const { open } = await import(pathToFileURL(path).href)
const bench = await open()
const jobs = text.split('\n').map((job) => Object.fromEntries(new URLSearchParams(job)))
const [fields] = jobs
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

let answer = 0
for (const job of jobs) answer = Math.max(answer, await median(100, () => bench.answer(job)))
const find = await median(300, (i) => bench.find(misspelt[i % misspelt.length]))

let draw = 0
for (const job of jobs) draw = Math.max(draw, await median(100, () => bench.draw(job)))

let long = 0
let slowest = ''
const name = 'a1 .é%'
const hundred = name.repeat(Math.ceil(100_000 / new TextEncoder().encode(name).length))
for (const field of [...Object.keys(fields), 'current', 'time', 'area', 'saltInHand', 'no such field']) {
  const took = await median(3, () => bench.answer({ ...fields, [field]: hundred }))
  if (took > long) [long, slowest] = [took, field]
}

console.log(String(new URLSearchParams({ answer, find, draw, long, slowest })))
bench.close()
