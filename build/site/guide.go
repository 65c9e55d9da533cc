package site

import (
	"bytes"
	"html/template"
	"os"
	"path/filepath"
	"strings"

	"github.com/evanw/esbuild/pkg/api"

	"saltbite/site/words"
)

// addGuide adds the pages that show how the element is put on a page, filled
// from the same tables as the page itself.
func (s Files) addGuide(root string, as built) error {
	folder := filepath.Join(root, "site", "embed", "guide")
	pages, err := template.New("index.html").Funcs(template.FuncMap{"lower": strings.ToLower}).ParseGlob(filepath.Join(folder, "*.html"))
	if err != nil {
		return err
	}
	filled := page{as, words.Example, parts()}
	for _, t := range pages.Templates() {
		var html bytes.Buffer
		if err := t.Execute(&html, filled); err != nil {
			return err
		}
		s["embed/"+t.Name()] = html.Bytes()
	}
	entries, err := os.ReadDir(folder)
	if err != nil {
		return err
	}
	for _, entry := range entries {
		if filepath.Ext(entry.Name()) == ".html" {
			continue
		}
		s["embed/"+entry.Name()], err = run(root, api.BuildOptions{EntryPoints: []string{filepath.Join(folder, entry.Name())}})
		if err != nil {
			return err
		}
	}
	return nil
}
