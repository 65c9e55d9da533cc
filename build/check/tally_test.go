package check

import (
	"bytes"
	"io"
	"strings"
	"testing"
)

func TestTallyCountsEveryTestOnce(t *testing.T) {
	// Lines as go1.26 `go test -json` prints them.
	events := `{"Action":"start","Package":"a"}
{"Action":"run","Package":"a","Test":"TestOne"}
{"Action":"run","Package":"a","Test":"TestOne/sub"}
{"Action":"output","Package":"a","Test":"TestOne/sub","Output":"    wrong by 2\n"}
{"Action":"fail","Package":"a","Test":"TestOne/sub","Elapsed":0}
{"Action":"fail","Package":"a","Test":"TestOne","Elapsed":0}
{"Action":"pass","Package":"a","Test":"TestTwo","Elapsed":0}
{"Action":"output","Package":"a","Output":"FAIL\n"}
{"Action":"fail","Package":"a","Elapsed":0.1}
{"ImportPath":"b [b.test]","Action":"build-output","Output":"b.go:1:1: no such thing\n"}
{"ImportPath":"b [b.test]","Action":"build-fail"}
{"Action":"fail","Package":"b","Elapsed":0,"FailedBuild":"b [b.test]"}
{"Action":"output","Package":"c","Test":"TestThree","Output":"    c_test.go:3: there is no engine\n"}
{"Action":"skip","Package":"c","Test":"TestThree","Elapsed":0}
{"Action":"pass","Package":"c","Elapsed":0}
`
	for _, strict := range []bool{false, true} {
		var out bytes.Buffer
		count := tally{out: &out, strict: strict}
		count.read("native", strings.NewReader(events), count.count("native", true))
		failed := 3 // a sub-test, its test, a package that does not compile
		if strict {
			failed++ // a test that could not run
		}
		if count.passed != 1 || count.failed != failed {
			t.Errorf("strict %v: %d passed, %d failed; 1 and %d expected\n%s", strict, count.passed, count.failed, failed, out.String())
		}
		for _, word := range []string{"wrong by 2", "no such thing"} {
			if !strings.Contains(out.String(), word) {
				t.Errorf("%q is not printed:\n%s", word, out.String())
			}
		}
		if !strict && (len(count.missing) != 1 || !strings.Contains(count.missing[0], "there is no engine")) {
			t.Errorf("what is missing is %q", count.missing)
		}
	}
}

func TestTallyEndsWithTheCount(t *testing.T) {
	var out bytes.Buffer
	count := tally{out: &out}
	count.check("right", func() error { return nil })
	count.check("wrong", func() error { return io.EOF })
	if err := count.end(); err == nil {
		t.Error("a failed check did not fail the run")
	}
	if !strings.HasSuffix(out.String(), "\n1 passed, 1 failed\n") {
		t.Errorf("ends with %q", out.String())
	}
}
