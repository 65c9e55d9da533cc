package site

import (
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/evanw/esbuild/pkg/api"

	"saltbite/build/seal"
)

// OfflineFiles are the files that a device keeps for use without internet: all that the
// page is made of.
var OfflineFiles = slices.Concat(PageFiles, ClassFiles, []string{laterBundle.out, logBundle.out, closerBundle.out, alongBundle.out, "long.wasm", manifestName,
	"icon-180.png", "icon-192.png", "icon-512.png", "icon-maskable.png", "icon-monochrome.png"})

// PageFiles are what the page loads before it answers. No picture is among them.
var PageFiles = []string{"index.html", "head.js", "style.css", Old, "page.js", "saltbite.wasm"}

const manifestName = "manifest.webmanifest"

// screenshots are the manifest's: a browser shows them while it offers to install
// the page, which it does only with internet.
var screenshots = []string{"tablet.png", "phone.png"}

// Keeper is the worker that keeps the site on a device.
const Keeper = "sw.js"

var keeper = bundle{entry: "site/offline/sw.js", out: Keeper, format: api.FormatIIFE}

// gone is what a host publishes as sw.js to withdraw the keeping.
var gone = bundle{entry: "site/offline/gone.js", out: "offline/gone.js", format: api.FormatIIFE}

// keptModule is what the keeper imports to know the kept files by.
const keptModule = "build:kept"

// KeepOffline adds to a site what keeps it on a device: the worker, which knows
// every file by its hash, and what withdraws it. page makes index.html once the
// name of the version, of all that is kept and of the worker itself, is known.
func KeepOffline(root string, made Files, names []string, page func(content string) ([]byte, error)) error {
	bare, err := keeper.makeWith(root, map[string]string{keptModule: writeKept(Files{}, "")})
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
	listed := Files{}
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

func writeKept(files Files, content string) string {
	hashes := map[string]string{}
	for name, body := range files {
		hashes[name] = seal.Of(body).Hash
	}
	list, _ := json.Marshal(hashes) // strings can always be encoded; the names are sorted
	return fmt.Sprintf("export const files = %s\nexport const content = %q\n", list, content)
}

var (
	inPage     = regexp.MustCompile(`<(?:link|script|img)\b[^>]*?(?:href|src)="([^"#]+)"`)
	inManifest = regexp.MustCompile(`"src": *"([^"]+)"`)
)

// nothingForgotten fails if a page or the manifest loads a file that is not
// kept: without internet it would be half there.
func nothingForgotten(files Files) error {
	loads := slices.Concat(inPage.FindAllSubmatch(files["index.html"], -1), inPage.FindAllSubmatch(files["class.html"], -1), inManifest.FindAllSubmatch(files[manifestName], -1))
	for _, load := range loads {
		name, _, _ := strings.Cut(string(load[1]), "?")
		if _, there := files[name]; !there && !strings.HasPrefix(name, "data:") && !slices.Contains(screenshots, name) {
			return fmt.Errorf("%s is loaded by the page and not kept for use without internet; kept are %s",
				name, strings.Join(slices.Sorted(slices.Values(files.Names())), ", "))
		}
	}
	return nil
}
