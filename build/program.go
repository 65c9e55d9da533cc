package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// buildProgram compiles a main package to WebAssembly, stripped and free of
// paths, so that two builds in two folders give the same bytes.
func buildProgram(root, pkg, version string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "saltbite-build-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	out := filepath.Join(dir, "program.wasm")
	if err := compile(root, pkg, version, "-s -w ", out); err != nil {
		return nil, err
	}
	return os.ReadFile(out)
}

// compile compiles a package to a file. strip are the linker's flags that leave
// out symbols, or "".
func compile(root, pkg, version, strip, out string) error {
	env, err := cleanEnv(root)
	if err != nil {
		return err
	}
	cmd := exec.Command("go", "build", "-trimpath", "-buildvcs=false",
		"-ldflags="+strip+"-buildid= -X main.version="+version, "-o", out, pkg)
	cmd.Dir = root
	cmd.Env = append(env, "GOOS=js", "GOARCH=wasm")
	if said, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("compile %s to WebAssembly: %w\n%s", pkg, err, said)
	}
	return nil
}

// kept are the settings that say where modules come from and where caches are:
// they don't change what is built.
var kept = []string{"GOPROXY", "GONOPROXY", "GOSUMDB", "GONOSUMDB", "GOPRIVATE", "GOINSECURE",
	"GOMODCACHE", "GOCACHE", "GOPATH", "GOTOOLCHAIN"}

// cleanEnv is the environment without the settings that would change what is
// built, whether they stand in it or in the file that `go env -w` writes.
func cleanEnv(root string) ([]string, error) {
	said, err := goSays(root, nil, append([]string{"env"}, kept...)...)
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
	goroot, err := goSays(root, nil, "env", "GOROOT")
	if err != nil {
		return nil, err
	}
	return os.ReadFile(filepath.Join(strings.TrimSpace(goroot), "lib", "wasm", "wasm_exec.js"))
}

// versionOf is the tag that stands exactly here, or "dev".
func versionOf(root string) string {
	cmd := exec.Command("git", "describe", "--tags", "--exact-match")
	cmd.Dir = root
	tag, err := cmd.Output()
	if err != nil {
		return "dev"
	}
	return string(bytes.TrimSpace(tag))
}

// goSays runs the go command in root, with more in its environment, and returns
// what it prints.
func goSays(root string, env []string, args ...string) (string, error) {
	cmd := exec.Command("go", args...)
	cmd.Dir = root
	cmd.Env = append(os.Environ(), env...)
	out, err := cmd.Output()
	if err != nil {
		var exit *exec.ExitError
		if errors.As(err, &exit) {
			return "", fmt.Errorf("go %s: %w\n%s", strings.Join(args, " "), err, exit.Stderr)
		}
		return "", fmt.Errorf("go %s: %w", strings.Join(args, " "), err)
	}
	return string(out), nil
}
