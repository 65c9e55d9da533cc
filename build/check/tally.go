package check

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"strings"
	"sync"
)

// ErrFailed is what a run returns after it has printed what failed.
var ErrFailed = errors.New("a check failed")

// tally counts checks. Every Go test and subtest counts as one, and so does
// every check that is not a Go test. Checks may run beside each other.
type tally struct {
	out    io.Writer
	strict bool // under -setup: what can't run has failed

	mu             sync.Mutex // over what follows, and over out
	passed, failed int
	missing        []string // what could not run, and why
}

// check counts one check that is not a Go test, and prints it.
func (t *tally) check(name string, run func() error) {
	if err := run(); err != nil {
		t.fail("%s\n%s\n", name, indent(err.Error()))
		return
	}
	t.pass()
	t.print("ok    %s\n", name)
}

func (t *tally) pass() {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.passed++
}

// fail counts one failure and prints it.
func (t *tally) fail(format string, args ...any) {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.failed++
	fmt.Fprintf(t.out, "FAIL  "+format, args...)
}

// lack counts a check that can't run here: a failure under -setup.
func (t *tally) lack(name, why string) {
	if t.strict {
		t.fail("%s could not run: %s\n", name, why)
		return
	}
	t.mu.Lock()
	defer t.mu.Unlock()
	t.missing = append(t.missing, name+": "+why)
}

// end prints what could not run and the count, and fails if anything has.
func (t *tally) end() error {
	for _, lack := range t.missing {
		fmt.Fprintln(t.out, "not run:", lack)
	}
	if len(t.missing) > 0 {
		fmt.Fprintln(t.out, "-setup installs what is missing")
	}
	fmt.Fprintf(t.out, "%d passed, %d failed\n", t.passed, t.failed)
	if t.failed > 0 {
		return ErrFailed
	}
	return nil
}

// event is a line of what `go test -json` prints.
type event struct {
	Action, Package, ImportPath, Test, Output string
	FailedBuild                               string
	Elapsed                                   float64
}

// ended is what is done with a Go test that has ended, and with what it printed.
type ended func(e event, output string)

// goTest runs `go test -json` and hands on its tests.
func (t *tally) goTest(title string, cmd *exec.Cmd, do ended) {
	pipe, err := cmd.StdoutPipe()
	if err != nil {
		t.check(title, func() error { return err })
		return
	}
	var complaints strings.Builder
	cmd.Stderr = &complaints
	if err := cmd.Start(); err != nil {
		t.check(title, func() error { return err })
		return
	}
	allPassed := t.read(title, pipe, do)
	if err := cmd.Wait(); err != nil && allPassed {
		t.check(title, func() error { return fmt.Errorf("%w\n%s", err, complaints.String()) })
	}
}

// read reads the events of one run. What a test printed is kept until it ends. It
// tells whether all passed.
func (t *tally) read(title string, events io.Reader, do ended) (allPassed bool) {
	allPassed = true
	said := map[string]*strings.Builder{}
	tested, broken := map[string]int{}, map[string]bool{}
	lines := bufio.NewScanner(events)
	lines.Buffer(nil, 16<<20)
	for lines.Scan() {
		var e event
		if json.Unmarshal(lines.Bytes(), &e) != nil {
			t.print("%s\n", lines.Text()) // printed by the toolchain, not by a test
			continue
		}
		key := e.Package + e.ImportPath + " " + e.Test
		switch e.Action {
		case "output", "build-output":
			if said[key] == nil {
				said[key] = &strings.Builder{}
			}
			said[key].WriteString(e.Output)
			continue
		case "pass", "fail", "skip":
		default:
			continue
		}
		output := text(said[key])
		delete(said, key)
		allPassed = allPassed && e.Action != "fail"
		if e.Test != "" {
			do(e, output)
			tested[e.Package]++
			broken[e.Package] = broken[e.Package] || e.Action == "fail"
			continue
		}
		if e.Action == "fail" && !broken[e.Package] { // did not compile, or ended before its tests did
			t.fail("%s %s\n%s", title, e.Package, indent(output+text(said[e.FailedBuild+" "])))
		}
		if e.Action == "pass" && tested[e.Package] > 0 {
			t.print("ok    %s %s: %d in %.1f s\n", title, e.Package, tested[e.Package], e.Elapsed)
		}
	}
	return allPassed
}

// print prints without counting.
func (t *tally) print(format string, args ...any) {
	t.mu.Lock()
	defer t.mu.Unlock()
	fmt.Fprintf(t.out, format, args...)
}

// count counts each test that has ended, and prints those that failed. mustRun says
// whether a test that skips itself is one that should have run.
func (t *tally) count(title string, mustRun bool) ended {
	return func(e event, output string) {
		switch {
		case e.Action == "pass":
			t.pass()
		case e.Action == "fail":
			t.fail("%s %s %s\n%s", title, e.Package, e.Test, indent(output))
		case mustRun:
			t.lack(e.Package+" "+e.Test, reason(output))
		}
	}
}

func text(b *strings.Builder) string {
	if b == nil {
		return ""
	}
	return b.String()
}

// reason is what a skipped test said, without the lines that go test adds.
func reason(output string) string {
	var kept []string
	for _, line := range strings.Split(output, "\n") {
		line = strings.TrimSpace(line)
		if line != "" && !strings.HasPrefix(line, "===") && !strings.HasPrefix(line, "---") {
			kept = append(kept, line)
		}
	}
	return strings.Join(kept, " ")
}

func indent(s string) string {
	s = strings.TrimRight(s, "\n")
	if s == "" {
		return ""
	}
	return "      " + strings.ReplaceAll(s, "\n", "\n      ") + "\n"
}
