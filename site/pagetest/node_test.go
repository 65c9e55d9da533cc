package pagetest

import (
	"encoding/json"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"saltbite/testdata"
)

// finished is the folder of the finished site.
func finished(t *testing.T) string {
	t.Helper()
	dist := os.Getenv("SALTBITE_DIST")
	if dist == "" {
		t.Skip("SALTBITE_DIST names no finished site; go run ./build test makes one and names it")
	}
	return dist
}

// node runs a module in Node, in a folder that is not the site's, and returns
// what it prints. The module finds the site's open imported.
func node(t *testing.T, module, input string) string {
	t.Helper()
	path, err := filepath.Abs(filepath.Join(finished(t), "saltbite.mjs"))
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command("node", "--input-type=module", "--eval",
		"import { open } from 'file://"+path+"'\n"+module)
	cmd.Dir = t.TempDir()
	cmd.Stdin = strings.NewReader(input)
	output, err := cmd.Output()
	var exit *exec.ExitError
	switch {
	case errors.Is(err, exec.ErrNotFound) && os.Getenv("SALTBITE_SETUP") == "":
		t.Skip("there is no node here")
	case errors.As(err, &exit):
		t.Fatalf("%v\n%s", err, exit.Stderr)
	case err != nil:
		t.Fatal(err)
	}
	return string(output)
}

// TestVectorsInNode sends every vector to saltbite.mjs as a script does.
func TestVectorsInNode(t *testing.T) {
	all, err := testdata.Vectors()
	if err != nil {
		t.Fatal(err)
	}
	replies := scriptReplies(t, all)
	for i, v := range all {
		for _, wrong := range v.Check(replies[i]) {
			t.Errorf("%s: %s", v.Name, wrong)
		}
	}
}

// scriptReplies are the replies to each vector that saltbite.mjs gives in Node.
func scriptReplies(t *testing.T, all []testdata.Vector) []string {
	t.Helper()
	asked := make([]map[string]string, len(all))
	for i, v := range all {
		asked[i] = map[string]string{}
		for name, texts := range v.Fields {
			asked[i][name] = texts[0]
		}
	}
	input, err := json.Marshal(asked)
	if err != nil {
		t.Fatal(err)
	}
	said := node(t, `
		import { readFileSync } from 'node:fs'
		const bench = await open()
		const replies = []
		for (const fields of JSON.parse(readFileSync(0, 'utf8'))) replies.push(JSON.stringify(await bench.answer(fields)))
		console.log(JSON.stringify(replies))
		bench.close()`, string(input))
	var replies []string
	if err := json.Unmarshal([]byte(said), &replies); err != nil {
		t.Fatal(err)
	}
	return replies
}

// TestDrawInNode draws a job as a script does: shapes with roles, in
// millimetres of a frame, and words that say the same.
func TestDrawInNode(t *testing.T) {
	said := node(t, `
		const bench = await open()
		const { section, curve, card, label } = await bench.draw({ metal: 'brass', depth: '0.2 mm', sheet: '18 ga', line: 0.5, density: 30 })
		const texts = (drawing) => drawing.shapes.filter((shape) => 'text' in shape).map((shape) => shape.text)
		const paths = (role) => section.shapes.filter((shape) => shape.role === role && 'path' in shape).length
		console.log([section.width, section.height, section.metal, paths('metal'), paths('resist') > 1, texts(section).includes('0.200 mm'),
			section.words.includes('0.824 mm is left'), texts(curve).includes('half-way'), card.height, label === undefined].join('|'))
		console.log(Object.keys(await bench.draw({})).length)
		bench.close()`, "")
	if want := "100|50|brass|1|true|true|true|true|210|true\n0\n"; said != want {
		t.Errorf("it draws %q, want %q", said, want)
	}
}

// TestAnythingIsAnswered passes invalid arguments to the calls: each is answered, none
// throws, and the next call works.
func TestAnythingIsAnswered(t *testing.T) {
	said := node(t, `
		const bench = await open()
		const around = {}; around.self = around
		const anything = [undefined, null, 5, NaN, 1n, 'metal=copper', Symbol('x'), [], [['metal', 'copper']], () => {}, new Date(NaN),
			new Map([['metal', 'copper']]), around, Object.create(null), new Proxy({}, { ownKeys() { throw 1 } }),
			{ get metal() { throw new Error('own') } }, { metal: Symbol('x') }, { metal: { toString() { throw 1 } } }, { metal: 1n },
			{ metal: around }, { metal: NaN, depth: Infinity }, { depth: -0 }, { '': '', '\0': '\0', __proto__: { x: 1 } },
			{ metal: '\ud800' }, { metal: 'copper', constructor: 'x', toString: 'y' }]
		let wrong = []
		for (const [i, one] of anything.entries()) {
			for (const call of ['answer', 'find', 'draw']) {
				try {
					const reply = await bench[call](one)
					const whole = call === 'find' ? Array.isArray(reply) : call === 'draw' ? typeof reply === 'object' && reply !== null
						: ['sentence', 'found', 'answers', 'rows', 'cautions', 'errors'].every((key) => key in reply)
					if (!whole) wrong.push(call + ' ' + i + ' gave ' + JSON.stringify(reply))
					if (call === 'answer' && reply.errors.some((e) => e.code === 'internal')) wrong.push('answer ' + i + ' is internal')
				} catch (reason) {
					wrong.push(call + ' ' + i + ' threw ' + String(reason))
				}
			}
		}
		const { answers } = await bench.answer({ metal: 'copper', metalDensity: 8.96, area: 10, depth: 0.1, density: 30 })
		if (Math.round(answers.time.value) !== 151) wrong.push('the call after them gave ' + JSON.stringify(answers.time))
		console.log(JSON.stringify(wrong))
		bench.close()`, "")
	var wrong []string
	if err := json.Unmarshal([]byte(said), &wrong); err != nil {
		t.Fatal(err)
	}
	for _, w := range wrong {
		t.Error(w)
	}
}

// TestACallCutShort rejects with its signal's reason, and the next call works.
func TestACallCutShort(t *testing.T) {
	said := node(t, `
		const bench = await open()
		const lines = []
		const before = AbortSignal.abort('before')
		lines.push(await bench.answer({ metal: 'copper' }, { signal: before }).catch((reason) => 'rejected ' + reason))
		const cut = new AbortController()
		const call = bench.answer({ metal: 'copper' }, { signal: cut.signal }).catch((reason) => 'rejected ' + reason)
		cut.abort('during')
		lines.push(await call)
		lines.push((await bench.find('sterling', { progress() {} }))[0].name)
		lines.push(typeof bench.version)
		bench.close()
		console.log(lines.join('|'))`, "")
	lines := strings.Split(strings.TrimSpace(said), "|")
	if len(lines) != 4 || lines[0] != "rejected before" || lines[1] != "rejected during" ||
		!strings.Contains(strings.ToLower(lines[2]), "sterling") || lines[3] != "string" {
		t.Errorf("calls cut short gave %q", lines)
	}
}
