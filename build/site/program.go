package site

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"saltbite/build/tool"
)

// BuildProgram compiles a main package to WebAssembly, stripped and free of
// paths, so that two builds in two folders give the same bytes.
func BuildProgram(root, pkg, version string, tags ...string) ([]byte, error) {
	return compile(root, pkg, "-s -w -buildid= -X main.version="+version, tags...)
}

// ProgramWithSymbols is the same program with the names of its functions.
func ProgramWithSymbols(root, pkg string) ([]byte, error) {
	return compile(root, pkg, "-buildid= -X main.version=dev")
}

// compiledSmall are the packages that are compiled for size: the compiler copies none of
// their functions into callers. They look up, read, choose and print, and each runs once or
// a few times per call, so that copies of them cost a visitor bytes and save no
// time that could be noticed. The others hold the loops that integrate, and
// calc/field's table, which the linker lays out only where the functions that make
// its rows are copied into it. A package that does not exist is passed over.
var compiledSmall = []string{"calc/quantity", "calc/metal", "calc/bath", "calc/bite", "calc/drawing", "calc/advice", "calc/job", "wasm"}

// compile compiles a main package with some flags of the linker.
func compile(root, pkg, linker string, tags ...string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "saltbite-build-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	env, err := cleanEnv(root)
	if err != nil {
		return nil, err
	}
	out := filepath.Join(dir, "program.wasm")
	args := []string{"build", "-trimpath", "-buildvcs=false", "-ldflags=" + linker, "-tags=" + strings.Join(tags, ",")}
	for _, name := range compiledSmall {
		args = append(args, "-gcflags=saltbite/"+name+"=-l")
	}
	cmd := exec.Command("go", append(args, "-o", out, pkg)...)
	cmd.Dir = root
	cmd.Env = append(env, tool.ForWasm...)
	if said, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("compile %s to WebAssembly: %w\n%s", pkg, err, said)
	}
	return os.ReadFile(out)
}

// kept are the settings that say where modules come from and where caches are:
// they don't change what is built.
var kept = []string{"GOPROXY", "GONOPROXY", "GOSUMDB", "GONOSUMDB", "GOPRIVATE", "GOINSECURE",
	"GOMODCACHE", "GOCACHE", "GOPATH", "GOTOOLCHAIN"}

// cleanEnv is the environment without the settings that would change what is
// built, whether they stand in it or in the file that `go env -w` writes.
func cleanEnv(root string) ([]string, error) {
	said, err := tool.Go(root, nil, append([]string{"env"}, kept...)...)
	if err != nil {
		return nil, err
	}
	var env []string
	for _, setting := range os.Environ() {
		if !strings.HasPrefix(setting, "GO") {
			env = append(env, setting)
		}
	}
	values := strings.Split(strings.TrimSuffix(said, "\n"), "\n")
	for i, name := range kept {
		env = append(env, name+"="+values[i])
	}
	return append(env, "GOENV=off", "GOFLAGS=", "GOWASM=", "GOEXPERIMENT=", "GOWORK=off"), nil
}

// glue is the toolchain's own wasm_exec.js, of the toolchain that compiles.
func glue(root string) ([]byte, error) {
	goroot, err := tool.Go(root, nil, "env", "GOROOT")
	if err != nil {
		return nil, err
	}
	return os.ReadFile(filepath.Join(strings.TrimSpace(goroot), "lib", "wasm", "wasm_exec.js"))
}

// versionOf is the tag of this commit, or "dev".
func versionOf(root string) string {
	cmd := exec.Command("git", "describe", "--tags", "--exact-match")
	cmd.Dir = root
	tag, err := cmd.Output()
	if err != nil {
		return "dev"
	}
	return string(bytes.TrimSpace(tag))
}
