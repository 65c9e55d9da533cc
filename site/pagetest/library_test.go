package pagetest

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"saltbite/build/browser"
)

// command runs a program in a folder and returns what it prints. If the
// program is not installed the test is skipped, or fails in a run that was to install it.
func command(t *testing.T, dir, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil && os.Getenv("SALTBITE_SETUP") == "" {
		t.Skip("there is no ", name, " here")
	}
	cmd := exec.Command(name, args...)
	cmd.Dir = dir
	said, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("%s %s: %v\n%s", name, strings.Join(args, " "), err, said)
	}
	return string(said)
}

func write(t *testing.T, path, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// copperCall answers the copper job in a script that has open imported: 151 min,
// by the calculation at copperTime.
const copperCall = `
const bench = await open()
const reply = await bench.answer({ metal: 'copper', metalDensity: '8.96', area: '10 cm2', depth: '0.1 mm', density: '30 mA/cm2' })
console.log(Math.round(reply.answers.time?.value ?? 0), (await bench.find('sterlin'))[0]?.id)
bench.close()
`

const copperSaid = "151 silver-925"

// TestPackage packs the site as npm does, installs it elsewhere without a
// network, and uses it there, its types too.
func TestPackage(t *testing.T) {
	dist, err := filepath.Abs(finished(t))
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	said := command(t, dir, "npm", "pack", "--silent", "--pack-destination", dir, dist)
	packed := filepath.Join(dir, filepath.Base(strings.TrimSpace(said)))
	list := command(t, dir, "tar", "tzf", packed)
	for _, name := range []string{"package.json", "saltbite.mjs", "saltbite.d.mts", "saltbite.wasm", "licences.txt"} {
		if !strings.Contains(list, "package/"+name+"\n") {
			t.Errorf("the package has no %s", name)
		}
	}
	for _, name := range []string{"index.html", ".br", ".gz"} {
		if strings.Contains(list, name) {
			t.Errorf("the package has %s in it", name)
		}
	}

	user := filepath.Join(dir, "someone else's")
	write(t, filepath.Join(user, "package.json"), `{"name": "workshop", "private": true, "type": "module"}`)
	command(t, user, "npm", "install", "--offline", "--no-audit", "--no-fund", "--silent", packed)
	write(t, filepath.Join(user, "ask.js"), "import { open } from 'saltbite'\n"+copperCall)
	if said := strings.TrimSpace(command(t, dir, "node", filepath.Join(user, "ask.js"))); said != copperSaid {
		t.Errorf("the installed package says %q", said)
	}

	right := `import { open, type Reply } from 'saltbite'
const bench = await open()
const reply: Reply = await bench.answer({ metal: 'copper', depth: 0.1 })
const minutes: number | undefined = reply.answers.time?.value
const bites: string[] = reply.rows.bites.map(({ depth, amperes }) => depth.text + amperes.unit)
await bench.find('brass', { progress: (share) => share.toFixed(2), signal: AbortSignal.timeout(1000) })
export { minutes, bites }
`
	holdTypes(t, user, right, map[string]string{"depth: 0.1": "depht: 0.1", "answers.time": "answers.tiem", "0.1 }": "{} }", "rows.bites": "rows.bitten", "toFixed(2)": "trim()"})
}

// holdTypes fails if the types refuse a script in a folder, or let pass one that has
// other words in the place of some.
func holdTypes(t *testing.T, dir, right string, wrong map[string]string) {
	t.Helper()
	tsc, err := filepath.Abs(filepath.Join("..", "node_modules", ".bin", "tsc"))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(tsc); err != nil {
		t.Skip("there is no tsc here")
	}
	scripts := map[string]string{"right.mts": right}
	for from, to := range wrong {
		scripts[fmt.Sprintf("wrong%d.mts", len(scripts))] = strings.Replace(right, from, to, 1)
	}
	args := []string{"--strict", "--noEmit", "--target", "es2022", "--module", "nodenext", "--lib", "es2022,dom"}
	for name, script := range scripts {
		write(t, filepath.Join(dir, name), script)
		args = append(args, name)
	}
	cmd := exec.Command(tsc, args...)
	cmd.Dir = dir
	said, _ := cmd.CombinedOutput() // it fails: most scripts are wrong
	for name, script := range scripts {
		if refused := strings.Contains(string(said), name+"("); refused != (name != "right.mts") {
			t.Errorf("the types refuse it: %v\n%s\n%s", refused, script, said)
		}
	}
}

// TestFromAnyFolder imports the site's module from folders whose names must be
// escaped in an address.
func TestFromAnyFolder(t *testing.T) {
	for _, name := range []string{"plain", "a b", "100% #1?", "größe ‘q’"} {
		t.Run(name, func(t *testing.T) {
			dir := filepath.Join(t.TempDir(), name)
			for _, file := range []string{"saltbite.mjs", "saltbite.wasm"} {
				body, err := os.ReadFile(filepath.Join(finished(t), file))
				if err != nil {
					t.Fatal(err)
				}
				write(t, filepath.Join(dir, file), string(body))
			}
			write(t, filepath.Join(dir, "ask.mjs"), "import { open } from './saltbite.mjs'\n"+copperCall)
			if said := strings.TrimSpace(command(t, "/", "node", filepath.Join(dir, "ask.mjs"))); said != copperSaid {
				t.Errorf("it says %q", said)
			}
		})
	}
}

// TestOnStrictPages uses the module of another origin on pages whose policies
// allow no more than it needs, and on one that allows no worker.
func TestOnStrictPages(t *testing.T) {
	t.Parallel()
	inEngines(t, browser.Names, func(t *testing.T, session *browser.Session) {
		s, other := serve(t), serve(t)
		from := other.URL + "/host/settings/"
		needed := "default-src 'none'; script-src 'self' 'wasm-unsafe-eval' " + from + "; connect-src 'self' " + from
		policies := map[string]string{
			"with a worker":      needed + "; worker-src blob:",
			"without a worker":   needed + "; worker-src 'none'",
			"with trusted types": needed + "; worker-src blob:; require-trusted-types-for 'script'; trusted-types saltbite",
			"with none allowed":  needed + "; worker-src blob:; require-trusted-types-for 'script'; trusted-types 'none'",
		}
		p := &page{t, session, s}
		for what, policy := range policies {
			s.policy = policy
			p.loadOnly("/scripts?most=2&from=" + from + "saltbite.mjs")
			p.until(`document.getElementById('replies').textContent !== ''`)
			if said := p.say(`return document.getElementById('replies').textContent`); strings.Count(said, `\"answers\"`) != 2 {
				t.Errorf("%s: %.300s; the console %.600s", what, said, p.consoleNow())
			}
		}
	})
}
