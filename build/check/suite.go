// Package check runs every check there is and counts them.
package check

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"

	"saltbite/build/measure"
	"saltbite/build/site"
	"saltbite/build/tool"
)

const (
	fuzzCalls   = 40_000 // of each fuzz target
	testTimeout = "60m"
	// Of the time of a page's test, a core is at work for a quarter: the rest is
	// waiting for frames, for pauses that the page makes, and for the driver.
	browsersPerCore = 2
)

// suite is one run of the checks.
type suite struct {
	root    string
	pattern string // of the names asked for; "" is all
	tally   tally
	made    site.Files
}

// Options are what is asked of a run.
type Options struct {
	Setup   bool   // first install what is missing; a check that can't run then fails
	Pattern string // of the names of checks and Go tests that are asked for; "" is all
}

// Run runs every check that is asked for, prints what failed, and ends with a
// count of them: "N passed, N failed". It returns ErrFailed if any has.
func Run(root string, o Options) error {
	if _, err := regexp.Compile(o.Pattern); err != nil {
		return fmt.Errorf("-run: %w", err)
	}
	s := &suite{root: root, pattern: o.Pattern, tally: tally{out: os.Stdout, strict: o.Setup}}
	s.all()
	return s.tally.end()
}

// all is every check, in the order in which a mistake is cheapest to find.
func (s *suite) all() {
	var setup sync.WaitGroup
	setup.Go(s.install) // which waits for a server and for one core
	s.source()
	setup.Wait()
	if s.made != nil {
		tool.InstallScripts(s.root) // an error is told by the first check that needs them
	}
	s.longest()
}

// finished is what the scripts and the finished site are held to, on a core each.
func (s *suite) finished() {
	var work sync.WaitGroup
	work.Go(s.types)
	if s.made != nil {
		work.Go(func() {
			s.sizes()
			s.check("two builds in two folders, by two users, are the same bytes", s.reproducible)
		})
	}
	work.Wait()
}

// install installs what is missing, if it is asked for, and names what is missing then.
func (s *suite) install() {
	if s.tally.strict {
		s.tally.check("what is missing is installed", func() error { return tool.Install(tool.Lacking()) })
	}
	for _, t := range tool.Lacking() {
		s.tally.print("missing: %s, for %s\n", t.Package, t.Use)
	}
}

// source is what needs the Go toolchain alone.
func (s *suite) source() {
	s.check("gofmt", s.formatted)
	s.check("go vet", func() error { return s.runs(nil, "go", "vet", "./...", "./testdata") })
	s.check("go vet of what is only WebAssembly", func() error {
		return errors.Join(s.runs(tool.ForWasm, "go", "vet", "./wasm", "./build/bare"), s.runs(tool.ForWasm, "go", "vet", "-tags=long", "./wasm"))
	})
	s.tally.check("the site builds", s.build) // the checks after it need the site
}

// longest runs what takes most of the time. The page's tests wait for frames and
// pauses for most of theirs; all else is done meanwhile, the Go tests at the lowest
// priority, so that they take only what those leave.
func (s *suite) longest() {
	var work sync.WaitGroup
	var failed crowded
	if s.made != nil {
		work.Go(func() {
			failed = s.page()
			s.judged()
		})
	}
	work.Go(func() {
		s.finished()
		s.native()
		s.inNode()
		s.fuzz()
	})
	work.Wait()
	s.alone(failed)
}

// check runs a check that is not a Go test, if it is asked for.
func (s *suite) check(name string, run func() error) {
	if asked, _ := regexp.MatchString(s.pattern, name); asked {
		s.tally.check(name, run)
	}
}

// runs runs a command in the repository; what it prints is part of its error.
func (s *suite) runs(env []string, name string, args ...string) error {
	return tool.Run(s.root, env, name, args...)
}

// formatted fails on a Go file that gofmt would change.
func (s *suite) formatted() error {
	cmd := exec.Command("gofmt", "-l", "build", "calc", "site", "testdata", "wasm")
	cmd.Dir = s.root
	output, err := cmd.CombinedOutput()
	var changed []string
	for _, line := range strings.Fields(string(output)) {
		if !strings.Contains(line, "node_modules") {
			changed = append(changed, line)
		}
	}
	if err != nil || len(changed) > 0 {
		return fmt.Errorf("gofmt would change %s", strings.Join(changed, ", "))
	}
	return nil
}

func (s *suite) build() error {
	made, err := site.Publish(s.root)
	if err != nil {
		return err
	}
	s.made = made
	return made.WriteTo(s.dist())
}

func (s *suite) dist() string { return filepath.Join(s.root, "dist") }

// goTests is one call of go test.
type goTests struct {
	title    string
	packages []string
	flags    []string
	env      []string
	mustRun  bool  // a test that skips itself counts as one that could not run
	gently   bool  // beside other tests, which go first
	do       ended // in the place of counting each test
}

func (s *suite) goTests(g goTests) {
	args := append([]string{"test", "-json", "-timeout", testTimeout}, g.flags...)
	if s.pattern != "" && !containsRun(g.flags) {
		args = append(args, "-run", s.pattern)
	}
	args = append([]string{"go"}, append(args, g.packages...)...)
	if g.gently {
		args = append(tool.Gently(), args...)
	}
	cmd := exec.Command(args[0], args[1:]...)
	cmd.Dir = s.root
	cmd.Env = append(os.Environ(), g.env...)
	if s.tally.strict {
		cmd.Env = append(cmd.Env, "SALTBITE_SETUP=1")
	}
	if g.do == nil {
		g.do = s.tally.count(g.title, g.mustRun)
	}
	s.tally.goTest(g.title, cmd, g.do)
}

func containsRun(flags []string) bool {
	for _, f := range flags {
		if strings.HasPrefix(f, "-run") {
			return true
		}
	}
	return false
}

// native runs every package's tests except those that wait for a browser.
func (s *suite) native() {
	packages, err := s.packages(func(pkg string) bool { return !inBrowsers(pkg) })
	if err != nil {
		s.tally.check("native tests", func() error { return err })
		return
	}
	s.goTests(goTests{title: "native", packages: packages, mustRun: true, gently: true})
}

// inBrowsers says whether a package's tests start browsers, which give up where they
// get no time.
func inBrowsers(pkg string) bool {
	return pkg == "saltbite/site/pagetest" || pkg == "saltbite/build/browser"
}

func (s *suite) packages(want func(string) bool) ([]string, error) {
	list, err := tool.Go(s.root, nil, "list", "./...", "./testdata")
	if err != nil {
		return nil, err
	}
	var packages []string
	for _, pkg := range strings.Fields(list) {
		if want(pkg) {
			packages = append(packages, pkg)
		}
	}
	return packages, nil
}

// inNode runs what becomes part of the program as WebAssembly.
func (s *suite) inNode() {
	if _, err := exec.LookPath("node"); err != nil {
		s.tally.lack("tests as WebAssembly", "there is no node here")
		return
	}
	runner, remove, err := tool.NodeRunner(s.root)
	if err != nil {
		s.tally.check("the runner of tests in Node", func() error { return err })
		return
	}
	defer remove()
	s.goTests(goTests{
		title:    "in Node",
		packages: []string{"./calc/...", "./wasm", "./testdata"},
		flags:    []string{"-exec", runner},
		env:      tool.ForWasm,
		gently:   true,
	})
}

// types checks the types of the page's JavaScript.
func (s *suite) types() {
	const name = "tsc over the page's JavaScript"
	if _, err := exec.LookPath("npm"); err != nil {
		s.tally.lack(name, "there is no npm here")
		return
	}
	s.check(name, func() error {
		if err := tool.InstallScripts(s.root); err != nil {
			return err
		}
		return s.script("tsc", "--project", "tsconfig.json", "--checkJs", "--strict", "--noEmit")
	})
	s.check("tsc over the script for old browsers", func() error {
		return s.script("tsc", "--allowJs", "--checkJs", "--strict", "--noEmit",
			"--target", "es5", "--lib", "es5,dom", filepath.Join(s.root, site.OldSource))
	})
	if s.made != nil {
		s.check("the script for old browsers is ECMAScript 5", func() error {
			return s.script("acorn", "--ecma5", "--silent", filepath.Join(s.dist(), site.Old))
		})
		s.check("tsc over the types for scripts", s.declared)
	}
}

// judged has Lighthouse look at the page.
func (s *suite) judged() {
	const name = "Lighthouse on the page"
	for _, program := range []string{"npm", "chromium"} {
		if _, err := exec.LookPath(program); err != nil {
			s.tally.lack(name, "there is no "+program+" here")
			return
		}
	}
	s.check(name, func() error { return measure.HoldToFullMarks(s.root, s.made) })
}

// script runs a program of the npm packages that tests use.
func (s *suite) script(name string, args ...string) error {
	return tool.Run(filepath.Join(s.root, "site"), nil, filepath.Join("node_modules", ".bin", name), args...)
}

// declared checks the types that the site offers to scripts.
func (s *suite) declared() error {
	return s.script("tsc", "--strict", "--noEmit",
		"--target", "es2022", "--module", "nodenext", "--lib", "es2022,dom", filepath.Join(s.dist(), "saltbite.d.mts"))
}

func (s *suite) sizes() {
	s.check("size of the program and of all that the page loads", func() error { return measure.CheckProgram(s.root, s.made) })
	s.check("size of the page's script", func() error { return measure.CheckScript(s.root) })
	s.check("size of the element's script", func() error { return measure.CheckElement(s.made["embed.js"]) })
}

// fuzz runs each fuzz target for a while.
func (s *suite) fuzz() {
	targets, err := fuzzTargets(s.root)
	if err != nil {
		s.tally.check("fuzz targets", func() error { return err })
		return
	}
	for _, t := range targets {
		s.check("fuzz "+t.pkg+" "+t.name, func() error { return t.run(s.root, fuzzCalls) })
	}
}
