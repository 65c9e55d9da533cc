package main

import (
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/evanw/esbuild/pkg/api"

	"saltbite/build/seal"
)

// offlineFiles are the files that a device keeps for use without internet: all that the
// page is made of.
var offlineFiles = []string{"index.html", "head.js", "style.css", oldest, "page.js", "saltbite.wasm",
	manifestName, "icon-180.png", "icon-192.png", "icon-512.png", "icon-maskable.png", "icon-monochrome.png"}

const manifestName = "manifest.webmanifest"

var keeper = bundle{entry: "site/offline/sw.js", out: "sw.js", format: api.FormatIIFE}

// gone is what a host publishes as sw.js to withdraw the keeping.
var gone = bundle{entry: "site/offline/gone.js", out: "offline/gone.js", format: api.FormatIIFE}

// keptModule is what the keeper imports to know the kept files by.
const keptModule = "build:kept"

// keepOffline adds to a site what keeps it on a device: the worker, which knows
// every file by its hash, and what withdraws it. page makes index.html once the
// name of the version, of all that is kept and of the worker itself, is known.
func keepOffline(root string, made site, names []string, page func(content string) ([]byte, error)) error {
	bare, err := keeper.makeWith(root, map[string]string{keptModule: writeKept(site{}, "")})
	if err != nil {
		return err
	}
	unnamed, err := page("")
	if err != nil {
		return err
	}
	all := map[string][]byte{keeper.out: bare, "index.html": unnamed}
	for _, name := range names {
		if name != "index.html" {
			all[name] = made[name]
		}
	}
	content := seal.Version(all)
	if made["index.html"], err = page(content); err != nil {
		return err
	}
	listed := site{}
	for _, name := range names {
		if listed[name] = made[name]; listed[name] == nil {
			return fmt.Errorf("%s is to be kept and is not made", name)
		}
	}
	if err := nothingForgotten(listed); err != nil {
		return err
	}
	made[keeper.out], err = keeper.makeWith(root, map[string]string{keptModule: writeKept(listed, content)})
	return err
}

func writeKept(files site, content string) string {
	hashes := map[string]string{}
	for name, body := range files {
		hashes[name] = seal.Of(body).Hash
	}
	list, _ := json.Marshal(hashes) // texts always can; in the order of the names
	return fmt.Sprintf("export const files = %s\nexport const content = %q\n", list, content)
}

var (
	inPage     = regexp.MustCompile(`<(?:link|script|img)\b[^>]*?(?:href|src)="([^"#]+)"`)
	inManifest = regexp.MustCompile(`"src": *"([^"]+)"`)
)

// nothingForgotten fails if the page or its manifest loads a file that is not
// kept: without internet it would be half there.
func nothingForgotten(files site) error {
	loads := append(inPage.FindAllSubmatch(files["index.html"], -1), inManifest.FindAllSubmatch(files[manifestName], -1)...)
	for _, load := range loads {
		name, _, _ := strings.Cut(string(load[1]), "?")
		if _, there := files[name]; !there && !strings.HasPrefix(name, "data:") {
			return fmt.Errorf("%s is loaded by the page and not kept for use without internet; kept are %s",
				name, strings.Join(slices.Sorted(slices.Values(files.names())), ", "))
		}
	}
	return nil
}
