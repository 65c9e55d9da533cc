package pagetest

import (
	"strings"
	"testing"

	"saltbite/build/browser"
)

// picturing puts pictures to a bench, and says what came. Half of the large one is
// black, in stripes of 20 pixels: at 40 mm across 2000 pixels each is 0.4 mm wide,
// half of 16 cm2 is open, and 99 edges of 40 mm lie within it. The small one is
// printed 79 dots across (20 mm at 100 an inch), of which 40 are white: 50.6 %.
const picturing = `async function picturing(bench) {
	const lines = [], say = (...words) => lines.push(words.join(' ')), copper = { metal: 'copper', metalDensity: '8.96', area: '10', depth: '0.1', density: '30' }
	const side = 2000, data = new Uint8ClampedArray(4 * side * side)
	for (let at = 0; at < data.length; at += 4) {
		data[at] = data[at + 1] = data[at + 2] = (at / 4 % side) % 40 < 20 ? 0 : 255
		data[at + 3] = 255
	}
	const large = { width: side, height: side, data }
	const order = [], shares = []
	const long = bench.measure(large, { width: '40 mm' }, { progress: (share) => shares.push(share) }).then((reply) => { order.push('long'); return reply })
	const short = bench.answer(copper).then(() => order.push('short'))
	const { answers, errors, rows } = await long
	await short
	say('measured', answers.open.text, answers.area.text, Math.round(answers.edge.value), answers.line.text, answers.space.text, errors.length, rows.narrow[0].kind.length)
	say('order', order.join())
	say('progress', shares.length > 1 && shares.at(-1) === 1 && shares.every((share, at) => share > (shares[at - 1] ?? 0)))
	say('kept', data.length === 4 * side * side && data[0] === 0)

	const cut = new AbortController()
	let state = 'waiting'
	const stopped = bench.measure(large, { width: '40 mm' }, { signal: cut.signal, progress: () => {
		if (cut.signal.aborted) return
		cut.abort('enough')
		setTimeout(() => say('one turn later', state))
	} }).then(() => { state = 'done' }, (reason) => { state = 'rejected: ' + reason })
	const queued = bench.measure({ width: 2, height: 1, data: new Uint8Array([0, 0, 0, 255, 255, 255, 255, 255]) }, { width: '2 mm' })
	await stopped
	await new Promise((resolve) => setTimeout(resolve))
	say('next', (await queued).answers.open.text)
	const early = await bench.measure(large, {}, { signal: AbortSignal.abort('before') }).catch((reason) => 'rejected: ' + reason)
	say('before', early)
	say('answer', (await bench.answer(copper)).answers.time.text)

	const { png } = await bench.prepare({ width: 2, height: 1, data: new Uint8Array([0, 0, 0, 255, 255, 255, 255, 255]) }, { width: '20 mm', dpi: '100' })
	say('prepared', String.fromCharCode(...png.slice(1, 4)))
	say('again', (await bench.measure(png, { width: '20 mm' })).answers.open.text)
	for (const none of [undefined, 5, 'text', {}, new Uint8Array(10), { width: 1e9, height: -1, data: null }, { get width() { throw 1 } }]) {
		const { errors } = await bench.measure(none, { width: '40 mm' })
		if (errors.length !== 1 || errors[0].code !== 'picture') say('what is no picture gives', JSON.stringify(errors))
	}
	return lines.join('\n')
}
`

const pictured = `measured 50.0 % 8.00 cm² 3960 0.400 mm 0.400 mm 0 4
order short,long
progress true
kept true
one turn later rejected: enough
next 50.0 %
before rejected: before
answer ` + copperTime + `
prepared PNG
again 50.6 %`

// TestPicturesInNode measures pictures in a thread of their own, beside the
// answers, and cuts one short.
func TestPicturesInNode(t *testing.T) {
	said := node(t, picturing+`
		const bench = await open()
		console.log(await picturing(bench))`, "") // it ends although the bench is not closed
	if got := strings.TrimSpace(said); got != pictured {
		t.Errorf("it says\n%s\nnot\n%s", got, pictured)
	}
}

// TestPictures does the same on a page, with workers and without.
func TestPictures(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, s *browser.Session) {
		for _, with := range []string{"", "?with=noworker"} {
			p := &page{t, s, serve(t)}
			if err := p.Navigate(p.server.URL + "/pictures" + with); err != nil {
				t.Fatal(err)
			}
			p.until(`document.body.textContent !== ''`)
			if got := p.say(`return document.body.textContent`); got != pictured {
				t.Errorf("%s: it says\n%s\nnot\n%s", with, got, pictured)
			}
		}
	})
}
