package site

import "github.com/evanw/esbuild/pkg/api"

const bareHTML = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>bare</title>` +
	`<script type="module" src="page.js"></script></head><body><p id="sentence"></p><input id="depth" value="0.2"></body></html>`

var bareBundle = bundle{entry: "build/bare/page.js", out: "page.js", format: api.FormatESModule}

// Bare is the least page: it asks the bare program, through the same worker and
// border, and shows its one answer. The site's size and speed are measured against it.
func Bare(root string) (Files, error) {
	program, err := BuildProgram(root, "./build/bare", "dev")
	if err != nil {
		return nil, err
	}
	least := Files{"saltbite.wasm": program, "index.html": []byte(bareHTML)}
	least[bareBundle.out], err = bareBundle.make(root, least)
	return least, err
}
