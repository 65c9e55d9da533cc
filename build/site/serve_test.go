package site

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"strconv"
	"strings"
	"testing"
)

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
	s := Files{"index.html": []byte(`<meta http-equiv="Content-Security-Policy" content="default-src 'none'">`),
		"saltbite.mjs": []byte("x"), "saltbite.wasm": []byte("y"), "style.css": []byte("z"), "embed/index.html": []byte(`<meta http-equiv="Content-Security-Policy" content="default-src 'self'">`)}
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
