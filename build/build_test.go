package main

import (
	"bytes"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"saltbite/calc/field"
	"saltbite/site/words"
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
		count.read("native", strings.NewReader(events), true)
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

func TestPolicyIsThePagesOwn(t *testing.T) {
	for page, want := range map[string]string{
		`<meta http-equiv="Content-Security-Policy" content="default-src &#39;none&#39;;` + "\n" + `  img-src data:">`: "default-src 'none'; img-src data:",
		`<meta name="x" content="y">`:                                "",
		`<meta http-equiv="Content-Security-Policy"><p content="y">`: "",
	} {
		if got := policyOf([]byte(page)); got != want {
			t.Errorf("policy of %s is %q", page, got)
		}
	}
}

func TestServedTypesAreTheServersOwn(t *testing.T) {
	s := &shop{site: site{"index.html": []byte(`<meta http-equiv="Content-Security-Policy" content="default-src 'none'">`),
		"saltbite.mjs": []byte("x"), "saltbite.wasm": []byte("y"), "style.css": []byte("z"), "embed/index.html": []byte(`<meta http-equiv="Content-Security-Policy" content="default-src 'self'">`)}}
	for path, want := range map[string]string{
		"/":                       "text/html; charset=utf-8",
		"/saltbite.mjs":           "text/javascript; charset=utf-8",
		"/saltbite.wasm":          "application/wasm",
		"/a/../style.css":         "text/css; charset=utf-8",
		"/embed/":                 "text/html; charset=utf-8",
		"/embed/index.html":       "text/html; charset=utf-8",
		"/embed":                  "404",
		"/nothing.js":             "404",
		"/../../../../etc/passwd": "404",
	} {
		answer := httptest.NewRecorder()
		s.ServeHTTP(answer, &http.Request{Method: "GET", URL: &url.URL{Path: path}, Header: http.Header{}})
		got := answer.Header().Get("Content-Type")
		if answer.Code != http.StatusOK {
			got = strconv.Itoa(answer.Code)
		} else if policy := answer.Header().Get("Content-Security-Policy"); (policy == "default-src 'self'") != strings.HasPrefix(path, "/embed/") {
			t.Errorf("%s is served under the policy %q", path, policy)
		}
		if got != want {
			t.Errorf("%s is served as %s, want %s", path, got, want)
		}
	}
}

func TestListensOnAFreePortIfTheUsualIsTaken(t *testing.T) {
	first, err := listen("")
	if err != nil {
		t.Fatal(err)
	}
	defer first.Close()
	second, err := listen("")
	if err != nil {
		t.Fatal(err)
	}
	defer second.Close()
	if !strings.HasPrefix(second.Addr().String(), "127.0.0.1:") || second.Addr().String() == first.Addr().String() {
		t.Errorf("listens at %v and %v", first.Addr(), second.Addr())
	}
}

func TestChangedSourcesAreNoticed(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "site", "page.js")
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	before := sources(dir)
	if !same(before, sources(dir)) {
		t.Error("sources changed by being looked at")
	}
	later := time.Now().Add(time.Minute)
	if err := os.Chtimes(file, later, later); err != nil {
		t.Fatal(err)
	}
	if same(before, sources(dir)) {
		t.Error("a changed source was not noticed")
	}
	if err := os.Remove(file); err != nil {
		t.Fatal(err)
	}
	if same(before, sources(dir)) {
		t.Error("a removed source was not noticed")
	}
}

func TestSiteOnDiskIsJustTheSite(t *testing.T) {
	dir := t.TempDir()
	old := site{"old.js": nil, "old/folder/in.js": nil, "embed": []byte("was a file"), "page.js/old": []byte("was a folder")}
	if err := old.writeTo(dir); err != nil {
		t.Fatal(err)
	}
	made := site{"index.html": []byte("page"), "page.js": []byte("script"), "embed/index.html": []byte("page")}
	for range 2 {
		if err := made.writeTo(dir); err != nil {
			t.Fatal(err)
		}
	}
	read, err := readSite(dir)
	if err != nil || fmt.Sprint(read) != fmt.Sprint(made) {
		t.Errorf("on disk is %v, %v", read.names(), err)
	}
	if _, err := os.Stat(filepath.Join(dir, "old")); err == nil {
		t.Error("an empty folder is left")
	}
}

func TestANameWithoutWordsFails(t *testing.T) {
	said := map[string]int{"depth": 1, "height": 2}
	err := alike("field", []string{"depth", "width"}, said)
	if err == nil || !strings.Contains(err.Error(), "width") || !strings.Contains(err.Error(), "height") {
		t.Errorf("width without words, words without height: %v", err)
	}
	if err := alike("field", []string{"depth", "height"}, said); err != nil {
		t.Error(err)
	}
	if err := everyNameHasWords(); err != nil {
		t.Error(err)
	}
}

func TestPageHasAControlForEveryField(t *testing.T) {
	html, err := pageHTML("..", built{Version: "v1.2.3"})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range field.Fields {
		if n := bytes.Count(html, []byte(` name="`+f.Name+`"`)); n == 0 {
			t.Errorf("the page has no control for %s", f.Name)
		}
	}
	for _, a := range field.Answers {
		if n := bytes.Count(html, []byte(`data-answer="`+a.Name+`"`)); n != 1 {
			t.Errorf("the page has %d places for the answer %s", n, a.Name)
		}
	}
	if !bytes.Contains(html, []byte("v1.2.3")) {
		t.Error("the page does not say its version")
	}
}

func TestEverySourceIsListedOnce(t *testing.T) {
	all := origins()
	listed := map[string]int{}
	for _, row := range all.Sources {
		listed[row.Key]++
		if row.Title == "" || url.PathEscape(row.Key) != row.Key {
			t.Errorf("a source %q has no title, or a key that is no id", row.Key)
		}
	}
	if len(listed) != len(words.Sources) || len(listed) != len(all.Sources) {
		t.Errorf("%d sources are listed, %d of them different, of %d", len(all.Sources), len(listed), len(words.Sources))
	}
	for i, a := range field.Answers {
		if o := all.Origins[i]; o.Name != a.Name || o.Label == "" || o.Formula == "" || len(o.Uses) != len(words.Origins[a.Name].Uses) {
			t.Errorf("the origin of %s is %+v", a.Name, o)
		}
	}
	if len(all.Cautions) != len(words.CautionOrigins) {
		t.Errorf("%d cautions are listed of %d", len(all.Cautions), len(words.CautionOrigins))
	}
	for id, m := range all.Metals {
		if m.Text == "" || m.Confidence == "" {
			t.Errorf("metal %s has no source", id)
		}
	}
}

func TestEveryFormOfFieldHasAName(t *testing.T) {
	for _, f := range field.Fields {
		if formNames[f.Form] == "" {
			t.Errorf("the form of %s has no name on the page", f.Name)
		}
	}
}

func TestReadmeHasTheTablesAsTheyAre(t *testing.T) {
	readme, err := os.ReadFile("../README.md")
	if err != nil {
		t.Fatal(err)
	}
	fresh, err := withTables(readme)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(fresh, readme) {
		t.Error("README.md has another table of fields than the vocabulary; go run ./build writes it")
	}
}

func TestNoToolIsAskedForTwice(t *testing.T) {
	seen := map[string]bool{}
	for _, tool := range tools {
		if seen[tool.pkg] || tool.probe == "" || tool.use == "" {
			t.Errorf("%+v", tool)
		}
		seen[tool.pkg] = true
	}
	if (tool{probe: "no-such-program-here"}).here() || !(tool{probe: "go"}).here() || !(tool{probe: "/"}).here() {
		t.Error("what is on this machine is not told from what is not")
	}
}
