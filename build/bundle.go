package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/evanw/esbuild/pkg/api"
)

// bundle is a script of the site, made of modules.
type bundle struct {
	entry  string // the module it starts from
	out    string // its name in dist/
	format api.Format
}

var bundles = []bundle{
	{"site/page/page.js", "page.js", api.FormatESModule},
	{"site/page/theme.js", "theme.js", api.FormatIIFE},     // runs before anything is painted, as no module does
	{"site/engine/worker.js", "engine.js", api.FormatIIFE}, // a worker made from a Blob is no module
	{"site/saltbite.mjs", "saltbite.mjs", api.FormatESModule},
}

// engines are the least that can run the page: the first with all that it uses.
var engines = []api.Engine{
	{Name: api.EngineSafari, Version: "16.4"},
	{Name: api.EngineFirefox, Version: "113"},
	{Name: api.EngineChrome, Version: "113"},
	{Name: api.EngineNode, Version: "20.16"},
}

// glueModule is what modules import to get wasm_exec.js:
//
//	import { installGo } from 'go:wasm_exec'
//	const Go = installGo(scope)
const glueModule = "go:wasm_exec"

// wrapGlue makes a module of wasm_exec.js. It stands unmodified in a function
// whose globalThis is a scope object, so that it puts nothing on the page. It
// calls fs by its bare name as well, which must then be the scope's.
func wrapGlue(glue []byte) string {
	return "export function installGo(scope) {\n" +
		"const fs = { writeSync: (fd, bytes) => scope.fs.writeSync(fd, bytes) };\n" +
		"(function (globalThis) {\n" + string(glue) + "\n})(scope);\n" +
		"return scope.Go;\n}\n"
}

func (b bundle) make(root string) ([]byte, error) {
	source, err := glue(root)
	if err != nil {
		return nil, err
	}
	return b.makeWith(root, wrapGlue(source))
}

func (b bundle) makeWith(root, glue string) ([]byte, error) {
	return run(root, api.BuildOptions{
		EntryPoints: []string{filepath.Join(root, b.entry)},
		Format:      b.format,
		Plugins:     []api.Plugin{providing(glue)},
	})
}

// styleSheet joins the style's files in the order of their names.
func styleSheet(root string) ([]byte, error) {
	files, err := filepath.Glob(filepath.Join(root, "site", "style", "*.css"))
	if err != nil {
		return nil, err
	}
	if len(files) == 0 {
		return nil, fmt.Errorf("no style in site/style")
	}
	slices.Sort(files)
	var imports strings.Builder
	for _, file := range files {
		fmt.Fprintf(&imports, "@import './%s';\n", filepath.Base(file))
	}
	return run(root, api.BuildOptions{Stdin: &api.StdinOptions{
		Contents: imports.String(), ResolveDir: filepath.Join(root, "site", "style"),
		Sourcefile: "style.css", Loader: api.LoaderCSS,
	}})
}

// modulesAreStrict keeps modules in strict mode where a bundle is none, whatever
// the type checker's own settings are.
const modulesAreStrict = `{"compilerOptions": {"alwaysStrict": true}}`

// run bundles and minifies; a warning is a mistake.
func run(root string, options api.BuildOptions) ([]byte, error) {
	options.AbsWorkingDir = root
	options.Bundle = true
	options.MinifyWhitespace = true
	options.MinifyIdentifiers = true
	options.MinifySyntax = true
	options.Engines = engines
	options.TsconfigRaw = modulesAreStrict
	options.Charset = api.CharsetUTF8
	options.LegalComments = api.LegalCommentsNone
	options.LogLevel = api.LogLevelSilent
	result := api.Build(options)
	if said := append(result.Errors, result.Warnings...); len(said) > 0 {
		lines := api.FormatMessages(said, api.FormatMessagesOptions{})
		return nil, fmt.Errorf("%s", strings.TrimSpace(strings.Join(lines, "")))
	}
	return result.OutputFiles[0].Contents, nil
}

// providing gives the module of wasm_exec.js its text.
func providing(text string) api.Plugin {
	return api.Plugin{Name: "wasm_exec", Setup: func(build api.PluginBuild) {
		build.OnResolve(api.OnResolveOptions{Filter: "^" + glueModule + "$"},
			func(api.OnResolveArgs) (api.OnResolveResult, error) {
				return api.OnResolveResult{Path: glueModule, Namespace: "go"}, nil
			})
		build.OnLoad(api.OnLoadOptions{Filter: ".*", Namespace: "go"},
			func(api.OnLoadArgs) (api.OnLoadResult, error) {
				return api.OnLoadResult{Contents: &text, Loader: api.LoaderJS}, nil
			})
	}}
}

// scriptWithoutGlue is the page's own script, without wasm_exec.js: what the
// limit of its size is about.
func scriptWithoutGlue(root string) ([]byte, error) {
	for _, b := range bundles {
		if b.out == "page.js" {
			return b.makeWith(root, "export function installGo(scope) { return scope.Go }")
		}
	}
	return nil, os.ErrNotExist
}
