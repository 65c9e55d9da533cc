package main

import (
	"fmt"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"saltbite/calc/field"

	"github.com/evanw/esbuild/pkg/api"

	"saltbite/build/seal"
)

// bundle is a script of the site, made of modules.
type bundle struct {
	entry   string // the module it starts from
	out     string // its name in dist/
	format  api.Format
	instead map[string]string // modules by those that take their place
}

// oldest is the script for browsers that can't run the page: it is in the
// language that they all read.
const oldest = "old.js"

// A module would have to come with its type, and some hosts send none.
var (
	headBundle = bundle{entry: "site/page/head.js", out: "head.js", format: api.FormatIIFE}
	pageBundle = bundle{entry: "site/page/page.js", out: "page.js", format: api.FormatIIFE}
)

var bundles = []bundle{
	headBundle,
	pageBundle,
	{entry: "site/saltbite.mjs", out: "saltbite.mjs", format: api.FormatESModule},
	{entry: "site/page/old.js", out: oldest, format: api.FormatIIFE},
	{entry: "site/embed/embed.js", out: "embed.js", format: api.FormatIIFE},
}

// vocabularyModule is what modules import to get the names of the fields.
const vocabularyModule = "go:vocabulary"

// vocabulary is the text of that module.
func vocabulary() string {
	var names []string
	for _, f := range field.Fields {
		names = append(names, strconv.Quote(f.Name))
	}
	return "export const fields = [" + strings.Join(names, ",") + "]\n"
}

// engines are the least that can run the page: the first with all that it uses.
// DecompressionStream came with these of Safari and Firefox, container queries
// with Chrome 105 (MDN's browser-compat-data 8.1.9); this Chrome is of their year.
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

// sealModule is what modules import to know the program by:
//
//	import { tag, integrity } from 'build:seal'
const sealModule = "build:seal"

// writeSeal makes that module, of the program as it is in a site.
func writeSeal(made site) string {
	s := seal.Of(made["saltbite.wasm"])
	return fmt.Sprintf("export const tag = %q, integrity = %q\n", s.Tag(), s.Integrity)
}

// workerModule is what modules import to get the worker's script as a function
// that needs nothing around it: a worker is made from a Blob of its text, and it
// runs on the page's own thread where no worker can be had.
//
//	import { work } from 'build:worker'
//	work(self)
const workerModule = "build:worker"

// writeWorker makes that module, with the worker's script made of others that the
// build writes and with what is added to it.
func writeWorker(root string, written map[string]string, added string) (string, error) {
	worker := bundle{entry: "site/engine/worker.js", format: api.FormatIIFE} // a worker made from a Blob is no module
	script, err := worker.makeWith(root, written)
	return "export function work(self) {\n" + string(script) + added + "\n}\n", err
}

// make makes the bundle for a site in which the program is made.
func (b bundle) make(root string, made site) ([]byte, error) {
	return b.makeAdding(root, made, "")
}

// makeAdding makes it with something added to the worker's script.
func (b bundle) makeAdding(root string, made site, added string) ([]byte, error) {
	source, err := glue(root)
	if err != nil {
		return nil, err
	}
	written := map[string]string{glueModule: wrapGlue(source), sealModule: writeSeal(made), vocabularyModule: vocabulary()}
	if written[workerModule], err = writeWorker(root, written, added); err != nil {
		return nil, err
	}
	return b.makeWith(root, written)
}

// makeWith makes the bundle with modules that the build writes, by their names.
func (b bundle) makeWith(root string, written map[string]string) ([]byte, error) {
	options := api.BuildOptions{
		EntryPoints: []string{filepath.Join(root, b.entry)},
		Format:      b.format,
		Plugins:     []api.Plugin{providing(written), exchanging(root, b.instead)},
	}
	if b.out == oldest {
		options.Target = api.ES5
	}
	return run(root, options)
}

// styleSheet joins the style's files in the order of their names, and after them
// those that are added.
func styleSheet(root string, added ...string) ([]byte, error) {
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
		fmt.Fprintf(&imports, "@import './style/%s';\n", filepath.Base(file))
	}
	for _, file := range added {
		fmt.Fprintf(&imports, "@import './%s';\n", file)
	}
	return run(root, api.BuildOptions{Stdin: &api.StdinOptions{
		Contents: imports.String(), ResolveDir: filepath.Join(root, "site"),
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
	if options.Target == api.DefaultTarget {
		options.Engines = engines
	}
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

// providing gives the modules that the build writes their text.
func providing(written map[string]string) api.Plugin {
	return api.Plugin{Name: "written", Setup: func(build api.PluginBuild) {
		build.OnResolve(api.OnResolveOptions{Filter: "^(go|build):"},
			func(args api.OnResolveArgs) (api.OnResolveResult, error) {
				return api.OnResolveResult{Path: args.Path, Namespace: "written"}, nil
			})
		build.OnLoad(api.OnLoadOptions{Filter: ".*", Namespace: "written"},
			func(args api.OnLoadArgs) (api.OnLoadResult, error) {
				text, known := written[args.Path]
				if !known {
					return api.OnLoadResult{}, fmt.Errorf("the build writes no module %s here", args.Path)
				}
				return api.OnLoadResult{Contents: &text, Loader: api.LoaderJS}, nil
			})
	}}
}

// exchanging puts modules in the place of others, which are not bundled.
func exchanging(root string, instead map[string]string) api.Plugin {
	return api.Plugin{Name: "instead", Setup: func(build api.PluginBuild) {
		build.OnResolve(api.OnResolveOptions{Filter: "^\\."}, func(args api.OnResolveArgs) (api.OnResolveResult, error) {
			name, err := filepath.Rel(root, filepath.Join(args.ResolveDir, args.Path))
			if other, there := instead[filepath.ToSlash(name)]; there {
				return api.OnResolveResult{Path: filepath.Join(root, other)}, nil
			}
			return api.OnResolveResult{}, err
		})
	}}
}

// scriptWithoutGlue is the page's own script and what starts the program, without
// wasm_exec.js: what the limit of its size is about.
func scriptWithoutGlue(root string) ([]byte, error) {
	written := map[string]string{glueModule: "export function installGo(scope) { return scope.Go }", sealModule: writeSeal(nil)}
	var err error
	if written[workerModule], err = writeWorker(root, written, ""); err != nil {
		return nil, err
	}
	starting := bundle{entry: "site/page/early.js", format: api.FormatIIFE}
	early, err := starting.makeWith(root, written)
	if err != nil {
		return nil, err
	}
	page, err := pageBundle.makeWith(root, written)
	return append(early, page...), err
}
