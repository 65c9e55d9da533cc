package site

import (
	"encoding/json"
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
	global  string            // the name by which it hands over what it exports
	instead map[string]string // replaced modules, each with its replacement
}

// Old is the script for browsers that can't run the page: it is in the
// language that they all read.
const Old = "old.js"

// OldSource is where that script's own source stands.
const OldSource = "site/page/start/old.js"

// These are not modules: a browser runs a module only if its type is sent, and
// some hosts send none.
var (
	headBundle = bundle{entry: "site/page/start/head.js", out: "head.js", format: api.FormatIIFE}
	pageBundle = bundle{entry: "site/page/page.js", out: "page.js", format: api.FormatIIFE}
	// What no first answer needs. The page's script knows it by its hash.
	laterBundle = bundle{entry: "site/page/later.js", out: "later.js", format: api.FormatIIFE, global: "saltbite.later"}
	// The log of runs, which is opened only by those who keep one.
	logBundle = bundle{entry: "site/page/log/log.js", out: "log.js", format: api.FormatIIFE, global: "saltbite.log"}
	// What is done with a picture that stands in the part Artwork. The second script
	// knows it by its hash.
	closerBundle = bundle{entry: "site/page/artwork/closer.js", out: "closer.js", format: api.FormatIIFE, global: "saltbite.closer"}
	// The cut along a line across the picture, for those who ask for one.
	alongBundle = bundle{entry: "site/page/artwork/along.js", out: "along.js", format: api.FormatIIFE, global: "saltbite.along"}
)

var bundles = []bundle{
	headBundle,
	alongBundle,            // before the one that knows its hash
	closerBundle,           // before the second, which knows its hash
	laterBundle, logBundle, // before the page's, which knows their hashes
	pageBundle,
	classBundle,
	{entry: "site/saltbite.mjs", out: "saltbite.mjs", format: api.FormatESModule},
	{entry: OldSource, out: Old, format: api.FormatIIFE},
	{entry: "site/embed/embed.js", out: "embed.js", format: api.FormatIIFE},
}

// vocabularyModule is what modules import to get the names of the fields.
const vocabularyModule = "go:vocabulary"

// vocabulary is the text of that module.
func vocabulary() string {
	var names []string
	for _, f := range field.Fields {
		names = append(names, f.Name)
	}
	return "export const fields = " + strconv.Quote(strings.Join(names, " ")) + ".split(' ')\n" // shorter than a list
}

// engines are the oldest browsers that can run the page: the first versions with
// everything that it uses.
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

// sealModule is what modules import to recognise the two programs and the page's
// other scripts:
//
//	import { short, long, later, log, closer, along } from 'build:seal'
const sealModule = "build:seal"

// writeSeal makes that module, of the files as they are in a site.
func writeSeal(made Files) string {
	var text strings.Builder
	for _, of := range []struct{ name, file string }{
		{"short", "saltbite.wasm"}, {"long", "long.wasm"}, {"later", laterBundle.out}, {"log", logBundle.out}, {"closer", closerBundle.out}, {"along", alongBundle.out},
	} {
		s := seal.Of(made[of.file])
		fmt.Fprintf(&text, "export const %s = { tag: %q, integrity: %q }\n", of.name, s.Tag(), s.Integrity)
	}
	return text.String()
}

// sourcedModule is what modules import to say where each figure comes from:
//
//	import { sourced } from 'build:sourced'
const sourcedModule = "build:sourced"

// writeSourced makes that module.
func writeSourced() string {
	list, _ := json.Marshal(origins()) // strings can always be encoded
	return "export const sourced = " + string(list) + "\n"
}

// closerStyleModule is what modules import to get the style of what the third script
// makes, which the page's own style sheet has no room for:
//
//	import { style } from 'build:closer.css'
const closerStyleModule = "build:closer.css"

// writeCloserStyle makes that module.
func writeCloserStyle(root string) (string, error) {
	style, err := run(root, api.BuildOptions{EntryPoints: []string{filepath.Join(root, "site", "page", "artwork", "closer.css")}})
	text, _ := json.Marshal(strings.TrimSpace(string(style))) // strings can always be encoded
	return "export const style = " + string(text) + "\n", err
}

// workerModule is what modules import to get the worker's script as a function
// that needs nothing around it: a worker is made from a Blob of its text, or it
// runs on the page's own thread if there can be no worker.
//
//	import { work } from 'build:worker'
//	work(self)
const workerModule = "build:worker"

// writeWorker makes that module, with the worker's script made of others that the
// build writes and with what is added to it.
func writeWorker(root string, written map[string]string, added string) (string, error) {
	worker := bundle{entry: "site/engine/worker.js", format: api.FormatIIFE} // a worker made from a Blob is not a module
	script, err := worker.makeWith(root, written)
	return "export function work(self) {\n" + string(script) + added + "\n}\n", err
}

// WithWorkerAdding is the site, or the bare page, with something added to the
// worker's script, and without what keeps it on a device.
func (s Files) WithWorkerAdding(root, added string) (Files, error) {
	holder := headBundle
	if s[holder.out] == nil {
		holder = bareBundle
	}
	script, err := holder.makeAdding(root, s, added)
	if err != nil {
		return nil, err
	}
	changed := s.WithoutTwins()
	delete(changed, Keeper)
	seal.Replace(changed, holder.out, script)
	return changed, nil
}

// make makes the bundle for a site in which the program is made.
func (b bundle) make(root string, made Files) ([]byte, error) {
	return b.makeAdding(root, made, "")
}

// makeAdding makes it with something added to the worker's script.
func (b bundle) makeAdding(root string, made Files, added string) ([]byte, error) {
	source, err := glue(root)
	if err != nil {
		return nil, err
	}
	written := map[string]string{glueModule: wrapGlue(source), sealModule: writeSeal(made), vocabularyModule: vocabulary(), sourcedModule: writeSourced()}
	if written[workerModule], err = writeWorker(root, written, added); err != nil {
		return nil, err
	}
	if written[closerStyleModule], err = writeCloserStyle(root); err != nil {
		return nil, err
	}
	return b.makeWith(root, written)
}

// makeWith makes the bundle with modules that the build writes, by their names.
func (b bundle) makeWith(root string, written map[string]string) ([]byte, error) {
	options := api.BuildOptions{
		EntryPoints: []string{filepath.Join(root, b.entry)},
		Format:      b.format,
		GlobalName:  b.global,
		Plugins:     []api.Plugin{providing(written), exchanging(root, b.instead)},
	}
	if b.out == Old {
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

// modulesAreStrict keeps the code in strict mode when the bundle is not a module,
// whatever the type checker's settings are.
const modulesAreStrict = `{"compilerOptions": {"alwaysStrict": true}}`

// ClassScript is the script of the page for a class.
func ClassScript(root string) ([]byte, error) {
	return classBundle.makeWith(root, map[string]string{vocabularyModule: vocabulary()})
}

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

// exchanging puts modules instead of others, which are not bundled.
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

// ScriptWithoutGlue is the page's own script and the code that starts the program,
// without wasm_exec.js. The limit of size is for this.
func ScriptWithoutGlue(root string) ([]byte, error) {
	written := map[string]string{glueModule: "export function installGo(scope) { return scope.Go }", sealModule: writeSeal(nil), vocabularyModule: vocabulary()}
	var err error
	if written[workerModule], err = writeWorker(root, written, ""); err != nil {
		return nil, err
	}
	starting := bundle{entry: "site/page/start/preload.js", format: api.FormatIIFE}
	early, err := starting.makeWith(root, written)
	if err != nil {
		return nil, err
	}
	page, err := pageBundle.makeWith(root, written)
	return append(early, page...), err
}

// LaterWithoutTexts is the page's second script without where the figures come
// from, which is data and grows with the words.
func LaterWithoutTexts(root string) ([]byte, error) {
	return laterBundle.makeWith(root, map[string]string{sourcedModule: "export const sourced = { origins: [], cautions: [], sources: [], metals: {} }", sealModule: writeSeal(nil)})
}

// CloserScript is the page's third script without its style.
func CloserScript(root string) ([]byte, error) {
	return closerBundle.makeWith(root, map[string]string{closerStyleModule: "export const style = ''", sealModule: writeSeal(nil)})
}

// AlongScript is what draws a cut along a line.
func AlongScript(root string) ([]byte, error) { return alongBundle.makeWith(root, nil) }

// LogScript is the page's third script.
func LogScript(root string) ([]byte, error) { return logBundle.makeWith(root, nil) }
