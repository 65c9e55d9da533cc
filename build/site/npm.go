package site

import (
	"bytes"
	"encoding/json"
	"regexp"
	"strings"

	"github.com/evanw/esbuild/pkg/api"
)

// manifest is the part of package.json that is used (docs.npmjs.com, "package.json").
type manifest struct {
	Name        string            `json:"name"`
	Version     string            `json:"version"`
	Private     bool              `json:"private"` // npm refuses to publish it
	Description string            `json:"description"`
	License     string            `json:"license"`
	Type        string            `json:"type"`
	Exports     map[string]export `json:"exports"`
	Files       []string          `json:"files"`
	Engines     map[string]string `json:"engines"`
}

// export is what an import of the package gets. The types stand first: of
// several conditions the first that holds is taken.
type export struct {
	Types   string `json:"types"`
	Default string `json:"default"`
}

// npmPackage is the package.json that makes the site a package as well: `npm
// pack` in dist/ gives a file that `npm install` takes. It is never published.
func npmPackage(version string) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	e.Encode(manifest{ // writing to a bytes.Buffer never fails
		Name:        "saltbite",
		Version:     npmVersion(version),
		Private:     true,
		Description: "Works out depth, time, current and bath for etching by current in a salt bath.",
		License:     "BSD-3-Clause",
		Type:        "module",
		Exports:     map[string]export{".": {"./saltbite.d.mts", "./saltbite.mjs"}},
		Files:       []string{"saltbite.mjs", "saltbite.d.mts", "saltbite.wasm", "long.wasm", "licences.txt", "versions.txt"},
		Engines:     map[string]string{"node": ">=" + nodeEngine()},
	})
	return b.Bytes()
}

// nodeEngine is the least Node that scripts are made for.
func nodeEngine() string {
	for _, e := range engines {
		if e.Name == api.EngineNode {
			return e.Version
		}
	}
	return ""
}

var semantic = regexp.MustCompile(`^(0|[1-9]\d*)\.(0|[1-9]\d*)\.(0|[1-9]\d*)(-[0-9A-Za-z.-]+)?$`)

// npmVersion is the version as package managers want it (semver.org 2.0.0): a
// tag without its v. What is no such version is before the first one.
func npmVersion(version string) string {
	if plain := strings.TrimPrefix(version, "v"); semantic.MatchString(plain) {
		return plain
	}
	return "0.0.0-dev"
}
