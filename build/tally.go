package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"os/exec"
	"strings"
)

// tally counts checks. Every Go test and subtest counts as one, and so does
// every check that is no Go test.
type tally struct {
	out            io.Writer
	strict         bool // under -setup: what can't run has failed
	passed, failed int
	missing        []string // what could not run, and why
}

// check counts one check that is no Go test, and prints it.
func (t *tally) check(name string, run func() error) {
	if err := run(); err != nil {
		t.failed++
		fmt.Fprintf(t.out, "FAIL  %s\n%s\n", name, indent(err.Error()))
		return
	}
	t.passed++
	fmt.Fprintf(t.out, "ok    %s\n", name)
}

// lack counts a check that can't run here: a failure under -setup.
func (t *tally) lack(name, why string) {
	if t.strict {
		t.failed++
		fmt.Fprintf(t.out, "FAIL  %s could not run: %s\n", name, why)
		return
	}
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
		return errFailed
	}
	return nil
}

// event is a line of what `go test -json` prints.
type event struct {
	Action, Package, ImportPath, Test, Output string
	FailedBuild                               string
	Elapsed                                   float64
}

// goTest runs `go test -json` and counts its tests. mustRun says whether a test
// that skips itself is one that should have run.
func (t *tally) goTest(title string, cmd *exec.Cmd, mustRun bool) {
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
	before := t.failed
	t.read(title, pipe, mustRun)
	if err := cmd.Wait(); err != nil && t.failed == before {
		t.check(title, func() error { return fmt.Errorf("%w\n%s", err, complaints.String()) })
	}
}

// read counts the events of one run. What a test printed is kept until it ends
// and shown only if it failed.
func (t *tally) read(title string, events io.Reader, mustRun bool) {
	said := map[string]*strings.Builder{}
	tested, broken := map[string]int{}, map[string]bool{}
	lines := bufio.NewScanner(events)
	lines.Buffer(nil, 16<<20)
	for lines.Scan() {
		var e event
		if json.Unmarshal(lines.Bytes(), &e) != nil {
			fmt.Fprintln(t.out, lines.Text()) // not the test's own: the toolchain's
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
		if e.Test != "" {
			t.count(title, e, output, mustRun)
			tested[e.Package]++
			broken[e.Package] = broken[e.Package] || e.Action == "fail"
			continue
		}
		if e.Action == "fail" && !broken[e.Package] { // did not compile, or ended before its tests did
			t.failed++
			fmt.Fprintf(t.out, "FAIL  %s %s\n%s", title, e.Package, indent(output+text(said[e.FailedBuild+" "])))
		}
		if e.Action == "pass" && tested[e.Package] > 0 {
			fmt.Fprintf(t.out, "ok    %s %s: %d in %.1f s\n", title, e.Package, tested[e.Package], e.Elapsed)
		}
	}
}

// count counts one test.
func (t *tally) count(title string, e event, output string, mustRun bool) {
	switch {
	case e.Action == "pass":
		t.passed++
	case e.Action == "fail":
		t.failed++
		fmt.Fprintf(t.out, "FAIL  %s %s %s\n%s", title, e.Package, e.Test, indent(output))
	case mustRun:
		t.lack(e.Package+" "+e.Test, reason(output))
	}
}

func text(b *strings.Builder) string {
	if b == nil {
		return ""
	}
	return b.String()
}

// reason is what a skipped test said, without the frame that go test puts round it.
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
