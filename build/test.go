package main

import (
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
)

const (
	fuzzCalls   = 40_000 // of each fuzz target
	testTimeout = "40m"
)

// suite is one run of the checks.
type suite struct {
	root    string
	pattern string // of the names asked for; "" is all
	tally   tally
	made    site
}

// test runs every check, prints what failed, and ends with a count of them:
// "N passed, N failed".
func test(root string, args []string) error {
	var setup bool
	s := &suite{root: root}
	err := flags("test", args, func(set *flag.FlagSet) {
		set.BoolVar(&setup, "setup", false, "")
		set.StringVar(&s.pattern, "run", "", "")
	})
	if err != nil {
		return err
	}
	if _, err := regexp.Compile(s.pattern); err != nil {
		return fmt.Errorf("-run: %w", err)
	}
	s.tally = tally{out: os.Stdout, strict: setup}
	if setup {
		s.tally.check("what is missing is installed", func() error { return install(lacking()) })
	}
	for _, t := range lacking() {
		fmt.Printf("missing: %s, for %s\n", t.pkg, t.use)
	}
	s.all()
	return s.tally.end()
}

// all is every check, in the order in which a mistake is cheapest to find.
func (s *suite) all() {
	s.check("gofmt", s.formatted)
	s.check("go vet", func() error { return s.runs(nil, "go", "vet", "./...", "./testdata") })
	s.check("go vet of what is only WebAssembly", func() error {
		return s.runs(forWasm, "go", "vet", "./wasm", "./build/bare")
	})
	s.tally.check("the site builds", s.build) // what comes after stands on it
	s.native()
	s.inNode()
	s.types()
	if s.made != nil {
		s.sizes()
		s.check("two builds in two folders, by two users, are the same bytes", s.reproducible)
		s.page()
		s.judged()
	}
	s.fuzz()
}

// check runs a check that is no Go test, if it is asked for.
func (s *suite) check(name string, run func() error) {
	if asked, _ := regexp.MatchString(s.pattern, name); asked {
		s.tally.check(name, run)
	}
}

// runs runs a command in the repository; what it prints is part of its error.
func (s *suite) runs(env []string, name string, args ...string) error {
	return runIn(s.root, env, name, args...)
}

func runIn(dir string, env []string, name string, args ...string) error {
	cmd := exec.Command(name, args...)
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), env...)
	if output, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("%w\n%s", err, output)
	}
	return nil
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
	made, err := publish(s.root)
	if err != nil {
		return err
	}
	s.made = made
	return made.writeTo(s.dist())
}

func (s *suite) dist() string { return filepath.Join(s.root, "dist") }

// goTests is one call of go test.
type goTests struct {
	title    string
	packages []string
	flags    []string
	env      []string
	mustRun  bool // a test that skips itself could not run; elsewhere skipping is its right
}

func (s *suite) goTests(g goTests) {
	args := append([]string{"test", "-json", "-timeout", testTimeout}, g.flags...)
	if s.pattern != "" && !containsRun(g.flags) {
		args = append(args, "-run", s.pattern)
	}
	cmd := exec.Command("go", append(args, g.packages...)...)
	cmd.Dir = s.root
	cmd.Env = append(os.Environ(), g.env...)
	if s.tally.strict {
		cmd.Env = append(cmd.Env, "SALTBITE_SETUP=1")
	}
	s.tally.goTest(g.title, cmd, g.mustRun)
}

func containsRun(flags []string) bool {
	for _, f := range flags {
		if strings.HasPrefix(f, "-run") {
			return true
		}
	}
	return false
}

// native runs every package's tests but the page's, which share the machine
// with nothing else.
func (s *suite) native() {
	packages, err := s.packages(func(pkg string) bool { return pkg != pagePackage })
	if err != nil {
		s.tally.check("native tests", func() error { return err })
		return
	}
	s.goTests(goTests{title: "native", packages: packages, mustRun: true})
}

const pagePackage = "saltbite/site/pagetest"

func (s *suite) packages(want func(string) bool) ([]string, error) {
	list, err := goSays(s.root, nil, "list", "./...", "./testdata")
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

var forWasm = []string{"GOOS=js", "GOARCH=wasm"}

// inNode runs what becomes part of the program as WebAssembly.
func (s *suite) inNode() {
	if _, err := exec.LookPath("node"); err != nil {
		s.tally.lack("tests as WebAssembly", "there is no node here")
		return
	}
	dir, err := os.MkdirTemp("", "saltbite-goexec-")
	if err == nil {
		defer os.RemoveAll(dir)
		err = s.runs(nil, "go", "build", "-o", filepath.Join(dir, "goexec"), "./build/goexec")
	}
	if err != nil {
		s.tally.check("the runner of tests in Node", func() error { return err })
		return
	}
	s.goTests(goTests{
		title:    "in Node",
		packages: []string{"./calc/...", "./wasm", "./testdata"},
		flags:    []string{"-exec", filepath.Join(dir, "goexec")},
		env:      forWasm,
	})
}

// types checks the types of the page's JavaScript.
func (s *suite) types() {
	const name = "tsc over the page's JavaScript"
	if _, err := exec.LookPath("npm"); err != nil {
		s.tally.lack(name, "there is no npm here")
		return
	}
	site := filepath.Join(s.root, "site")
	s.check(name, func() error {
		if err := installScripts(site); err != nil {
			return err
		}
		return runIn(site, nil, filepath.Join("node_modules", ".bin", "tsc"), "--project", "tsconfig.json",
			"--checkJs", "--strict", "--noEmit")
	})
	bin := filepath.Join("node_modules", ".bin")
	s.check("tsc over the script for old browsers", func() error {
		return runIn(site, nil, filepath.Join(bin, "tsc"), "--allowJs", "--checkJs", "--strict", "--noEmit",
			"--target", "es5", "--lib", "es5,dom", filepath.Join("page", oldest))
	})
	if s.made != nil {
		s.check("the script for old browsers is ECMAScript 5", func() error {
			return runIn(site, nil, filepath.Join(bin, "acorn"), "--ecma5", "--silent", filepath.Join(s.dist(), oldest))
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
	s.check(name, s.lighthouse)
}

// declared checks the types that the site offers to scripts.
func (s *suite) declared() error {
	return runIn(filepath.Join(s.root, "site"), nil, filepath.Join("node_modules", ".bin", "tsc"), "--strict", "--noEmit",
		"--target", "es2022", "--module", "nodenext", "--lib", "es2022,dom", filepath.Join(s.dist(), "saltbite.d.mts"))
}

// installScripts brings the packages that only tests use, unless they are here
// as the lock file names them.
func installScripts(site string) error {
	lock, err := os.Stat(filepath.Join(site, "package-lock.json"))
	if err != nil {
		return err
	}
	if here, err := os.Stat(filepath.Join(site, "node_modules", ".package-lock.json")); err == nil && here.ModTime().After(lock.ModTime()) {
		return nil
	}
	return runIn(site, nil, "npm", "ci", "--no-audit", "--no-fund")
}

func (s *suite) sizes() {
	s.check("size of the program and of all that the page loads", func() error { return checkProgram(s.root, s.made) })
	s.check("size of the page's script", func() error {
		_, err := checkScript(s.root)
		return err
	})
	s.check("size of the element's script", func() error { return checkElement(s.made["embed.js"]) })
}

// page runs the page's tests in the three browser engines.
func (s *suite) page() {
	packages, err := s.packages(func(pkg string) bool { return pkg == pagePackage })
	if err == nil && len(packages) == 0 {
		err = errors.New("there is no " + pagePackage)
	}
	if err != nil {
		s.tally.check("the page in browsers", func() error { return err })
		return
	}
	s.goTests(goTests{title: "browsers", packages: packages, flags: []string{"-count=1"},
		env: []string{"SALTBITE_DIST=" + s.dist()}, mustRun: true})
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
