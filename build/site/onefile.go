package site

import (
	"crypto/sha256"
	"encoding/base64"
	"errors"
	"fmt"
	"maps"
	"path"
	"regexp"
	"slices"
	"strings"

	"github.com/evanw/esbuild/pkg/api"
)

// oneFile is a page that holds all that it needs: style, scripts, and the
// program packed by gzip as base64.
type oneFile struct {
	use     use
	out     string
	entry   string   // of what takes the place of page.js, or of class.js
	class   bool     // it is the page for a class, whose one call is in the other program
	without []string // parts of the page that can't work there
	style   []string // added to the page's style
}

var oneFiles = []oneFile{
	{use: asFile, out: "saltbite.html", entry: "site/page/page.js", without: []string{"device/offline", "artwork/begin"}},
	{use: asFile, out: "saltbite-class.html", entry: classBundle.entry, class: true},
	{use: inFrame, out: "embed.html", entry: "site/embed/frame.js", style: []string{"embed/frame.css"},
		without: []string{"device/offline", "artwork/begin", "jobs/manage", "jobs/share", "run/control"}},
}

// script is a bundle for the page as one file.
func (f oneFile) script(entry string) bundle {
	instead := map[string]string{
		"site/page/start/preload.js": "site/embed/without.js",
		"site/page/start/bench.js":   "site/embed/opening.js",
		"site/page/start/later.js":   "site/embed/later.js",
	}
	for _, part := range f.without {
		instead["site/page/"+part+".js"] = "site/embed/without.js"
	}
	return bundle{entry: entry, format: api.FormatIIFE, instead: instead}
}

// addOneFiles makes them of the files that the site has.
func (s Files) addOneFiles(root string, as built) error {
	for _, file := range oneFiles {
		as.Use = file.use
		files := maps.Clone(s)
		script, html := pageBundle.out, pageHTML
		if file.class {
			script, html = classBundle.out, s.classHTML
			files["saltbite.wasm"] = s["long.wasm"]
		}
		page, err := html(root, as)
		if err != nil {
			return err
		}
		for name, entry := range map[string]string{headBundle.out: headBundle.entry, script: file.entry} {
			if files[name], err = file.script(entry).make(root, s); err != nil {
				return err
			}
		}
		if files["style.css"], err = styleSheet(root, file.style...); err != nil {
			return err
		}
		if s[file.out], err = files.inlined(page); err != nil {
			return fmt.Errorf("%s: %w", file.out, err)
		}
	}
	return nil
}

// inliner puts the files of a site into a page, and keeps the hashes of what
// the page's policy must allow.
type inliner struct {
	site            Files
	scripts, styles []string
	late            strings.Builder // scripts that run once the page is there: a browser does not defer an inline script
	wrong           error
}

var (
	policyTag = regexp.MustCompile(`(<meta http-equiv="Content-Security-Policy" content=")[^"]*"`)
	linkTag   = regexp.MustCompile(`<link rel="([^"]*)" href="([^"]*)"[^>]*>\n`)
	scriptTag = regexp.MustCompile(`<script\b([^>]*?) src="([^"]*)"[^>]*></script>`)
	elsewhere = regexp.MustCompile(`<link\b[^>]*>|<[^>]*\ssrc=[^>]*>`) // what is left of them
)

// inlined is a page with the files that it names put into it, the program
// after all else, and a policy that allows just these.
func (s Files) inlined(page []byte) ([]byte, error) {
	in := inliner{site: s}
	text := linkTag.ReplaceAllStringFunc(string(page), in.link)
	text = scriptTag.ReplaceAllStringFunc(text, in.script)
	for _, left := range elsewhere.FindAllString(text, -1) {
		if !strings.Contains(left, `="data:`) {
			in.fail(fmt.Errorf("%s is no part of the file", left))
		}
	}
	policy := policyOfOneFile(policyOf(page), in.scripts, in.styles)
	text = policyTag.ReplaceAllLiteralString(text, `<meta http-equiv="Content-Security-Policy" content="`+policy+`"`)
	program := base64.StdEncoding.EncodeToString(gzipBest(s["saltbite.wasm"]))
	text = strings.Replace(text, "</body>", dataBlock("saltbite.wasm", program)+in.late.String()+"</body>", 1)
	return []byte(text), in.wrong
}

func (in *inliner) fail(err error) { in.wrong = errors.Join(in.wrong, err) }

// link is what stands instead of a link: a style sheet's text, an icon as
// data, or nothing where a single file can't use the link.
func (in *inliner) link(tag string) string {
	parts := linkTag.FindStringSubmatch(tag)
	rel, name := parts[1], parts[2]
	switch {
	case strings.HasPrefix(name, "data:"):
		return tag
	case rel == "stylesheet":
		style := in.text(name, "style")
		in.styles = append(in.styles, hashSource(style))
		return "<style>" + style + "</style>\n"
	case rel == "icon" && path.Ext(name) == ".svg":
		icon := base64.StdEncoding.EncodeToString(in.site[name])
		return `<link rel="icon" href="data:image/svg+xml;base64,` + icon + "\">\n"
	}
	return ""
}

func (in *inliner) script(tag string) string {
	parts := scriptTag.FindStringSubmatch(tag)
	script := in.text(parts[2], "script")
	in.scripts = append(in.scripts, hashSource(script))
	if strings.Contains(tag, " defer>") {
		fmt.Fprintf(&in.late, "<script>%s</script>\n", script)
		return ""
	}
	return "<script" + parts[1] + ">" + script + "</script>"
}

// text is a file as it stands inside an element: unchanged, since styles and
// scripts have no escapes.
func (in *inliner) text(name, element string) string {
	name, _, _ = strings.Cut(name, "?")
	body, found := in.site[name]
	if !found {
		in.fail(fmt.Errorf("there is no %s", name))
	}
	text := string(body)
	for _, end := range []string{"</" + element, "<!--"} {
		if strings.Contains(strings.ToLower(text), end) {
			in.fail(fmt.Errorf("%s holds %s and can't stand in a page", name, end))
		}
	}
	return text
}

// dataBlock is a text that a page holds and nothing runs.
func dataBlock(id, text string) string {
	return `<script type="text/plain" id="` + id + `">` + text + "</script>\n"
}

// hashSource names a script or a style in a policy.
func hashSource(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// policyOfOneFile is a page's policy where the page is one file: what it allowed
// of its own site is allowed by hash, or no more.
func policyOfOneFile(policy string, scripts, styles []string) string {
	hashes := map[string][]string{"script-src": scripts, "style-src": styles}
	var directives []string
	for directive := range strings.SplitSeq(policy, ";") {
		words := strings.Fields(directive)
		if len(words) == 0 {
			continue
		}
		name, sources := words[0], words[1:]
		if own := slices.Index(sources, "'self'"); own >= 0 {
			sources = slices.Concat(hashes[name], slices.Delete(sources, own, own+1))
			if len(sources) == 0 {
				continue // the default allows nothing
			}
		}
		directives = append(directives, strings.Join(append([]string{name}, sources...), " "))
	}
	return strings.Join(directives, "; ")
}
