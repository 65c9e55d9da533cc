package site

import (
	"bytes"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"text/template"
)

// header is a header that a host is asked to send, with its files and its
// reason in the words of the note for hosts.
type header struct {
	Name, Value string
	Files       []string // none: all
	Why         string
}

// Files that pages of other sites load, and show in a frame.
var (
	forOthers = []string{"saltbite.mjs", "saltbite.wasm", "long.wasm", "embed.js"}
	framed    = []string{"embed.html"}
)

// headers are what a host is asked to send beside the types. The page works
// without any of them.
func (s Files) headers() []header {
	return []header{
		{"Cache-Control", "no-cache", nil,
			"The names of the files stay the same from one version to the next. A browser may keep a copy, but must ask whether it is still right; otherwise a page of one version may meet a program of another."},
		{"Vary", "Accept-Encoding", nil,
			"A cache on the way must not give a compressed one to a browser that can't read it."},
		{"X-Content-Type-Options", "nosniff", nil,
			"A browser then goes by the type that is sent and does not guess. Leave it out where the types can't be set."},
		{"Referrer-Policy", "no-referrer", nil,
			"No address of this page, and so no job in it, is told to another site."},
		{"Content-Security-Policy", policyOf(s["index.html"]), []string{"index.html"},
			"Only this site's own files run or load, and nothing is sent anywhere. The page says so itself in its head; the header says it before the page is read. It is for this file alone, as each page here has a policy of its own."},
		{"Access-Control-Allow-Origin", "*", forOthers,
			"Pages of other sites may then use the calculator. It keeps no secret and knows no visitor. Leave it out to keep it to this site."},
		{"Cross-Origin-Resource-Policy", "cross-origin", slices.Concat(forOthers, framed),
			"The same, for pages that shut themselves off from others by a Cross-Origin-Embedder-Policy of their own."},
		{"Cross-Origin-Embedder-Policy", "require-corp", framed,
			"Such pages show a frame only if it has this policy as well. The file loads nothing, so it is never in the way."},
	}
}

func (h header) isFor(name string) bool { return h.Files == nil || slices.Contains(h.Files, name) }

// kind is a type that a host is asked to send, and how the names of its files end.
type kind struct{ Suffix, Type string }

// kinds are the types of the files that the site has.
func (s Files) kinds() []kind {
	var all []kind
	for _, name := range s.Names() {
		k := kind{path.Ext(name), types[path.Ext(name)]}
		if k.Type != "" && !slices.Contains(all, k) {
			all = append(all, k)
		}
	}
	slices.SortFunc(all, func(a, b kind) int { return strings.Compare(a.Suffix, b.Suffix) })
	return all
}

// note is hosting.txt, the note for hosts, filled with what this site has.
func (s Files) note(root string) ([]byte, error) {
	functions := template.FuncMap{
		"has":  func(name string) bool { return s[name] != nil },
		"list": func(names []string) string { return strings.Join(names, ", ") },
		"wrap": wrapped,
	}
	form, err := template.New("hosting.txt").Funcs(functions).
		ParseFiles(filepath.Join(root, "site", "hosting", "hosting.txt"))
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	err = form.Execute(&b, struct {
		Headers []header
		Kinds   []kind
	}{s.headers(), s.kinds()})
	return b.Bytes(), err
}

// wrapped breaks a text into lines of at most width characters that begin with indent.
func wrapped(indent string, width int, text string) string {
	var b strings.Builder
	line := indent
	for _, word := range strings.Fields(text) {
		if line != indent && len(line)+1+len(word) > width {
			b.WriteString(line + "\n")
			line = indent
		}
		if line != indent {
			line += " "
		}
		line += word
	}
	return b.String() + line
}
