package check

import (
	"errors"
	"regexp"
	"runtime"
	"strconv"
	"strings"

	"saltbite/build/browser"
)

// crowded are the page's tests that failed while all else shared the machine with
// them, and what each said.
type crowded struct {
	tests goTests
	said  []failure
}

// failure is a Go test that failed, and what it said.
type failure struct {
	event
	output string
}

// mostAlone is how many tests are tried again at most: where more have failed, the
// machine is not the reason.
const mostAlone = 4

// page runs the page's tests in the three browser engines. Those that failed are left
// to alone.
func (s *suite) page() (failed crowded) {
	packages, err := s.packages(inBrowsers)
	if err == nil && len(packages) < 2 {
		err = errors.New("a package whose tests start browsers is gone")
	}
	if err != nil {
		s.tally.check("the page in browsers", func() error { return err })
		return failed
	}
	env := []string{"SALTBITE_DIST=" + s.dist()}
	switch used, remove, err := browser.UseProfile(); {
	case err == nil:
		defer remove()
		env = append(env, browser.UsedProfile+"="+used)
	case !errors.Is(err, browser.ErrMissing):
		s.tally.check("a used profile of Firefox", func() error { return err })
	}
	failed.tests = goTests{title: "browsers", packages: packages, env: []string{"SALTBITE_DIST=" + s.dist()}}
	count := s.tally.count(failed.tests.title, true)
	s.goTests(goTests{title: failed.tests.title, packages: packages, env: env,
		flags: []string{"-count=1", "-parallel", strconv.Itoa(browsersPerCore * runtime.NumCPU())},
		do: func(e event, output string) {
			if e.Action == "fail" {
				failed.said = append(failed.said, failure{e, output})
				return
			}
			count(e, output)
		}})
	return failed
}

// alone runs the page's tests that failed once more, with the machine to themselves,
// since a page test waits for frames and for other programs, which a full machine may
// keep for seconds. What fails again has failed. What passes is counted so, and named,
// with what it said at first: it waits for something that need not come in time.
func (s *suite) alone(failed crowded) {
	leaves := leavesOf(failed.said)
	passed := map[string]bool{}
	if len(leaves) <= mostAlone {
		for _, leaf := range leaves {
			g := failed.tests
			g.title += ", alone"
			g.packages = []string{leaf.Package}
			g.flags = []string{"-count=1", "-parallel", "1", "-run", patternOf(leaf.Test)}
			g.do = func(e event, _ string) {
				if e.Test == leaf.Test {
					passed[e.Test] = e.Action == "pass"
				}
			}
			s.goTests(g)
		}
	}
	count := s.tally.count(failed.tests.title, true)
	for _, f := range failed.said {
		if !allPassed(f.Test, leaves, passed) {
			count(f.event, f.output)
			continue
		}
		s.tally.pass()
		s.tally.print("ok    %s %s %s, alone; before, beside others:\n%s", failed.tests.title, f.Package, f.Test, indent(f.output))
	}
}

// leavesOf are the failures without a failure below them.
func leavesOf(said []failure) (leaves []failure) {
	for _, f := range said {
		below := false
		for _, other := range said {
			below = below || isBelow(other.Test, f.Test)
		}
		if !below {
			leaves = append(leaves, f)
		}
	}
	return leaves
}

func isBelow(test, above string) bool { return strings.HasPrefix(test, above+"/") }

// allPassed says whether a test, and all below it that had failed, have passed.
func allPassed(test string, leaves []failure, passed map[string]bool) bool {
	for _, leaf := range leaves {
		if (leaf.Test == test || isBelow(leaf.Test, test)) && !passed[leaf.Test] {
			return false
		}
	}
	return true
}

// patternOf is what -run takes to mean one test alone.
func patternOf(test string) string {
	parts := strings.Split(test, "/")
	for i, part := range parts {
		parts[i] = "^" + regexp.QuoteMeta(part) + "$"
	}
	return strings.Join(parts, "/")
}
