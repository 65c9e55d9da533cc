package check

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"

	"saltbite/build/site"
	"saltbite/build/tool"
)

// sourceTree is everything that the site is made from, the build included. Only
// this is copied to where it is made again.
var sourceTree = []string{"go.mod", "go.sum", "LICENSE", "README.md", "build", "calc", "wasm", "testdata", "site"}

// reproducible makes the site twice, each time from a copy of the sources in
// another folder: once as this user and once as another one, who has a home, a
// cache, settings and habits of their own. It compares the bytes. A copy stands
// in no repository, so that both are the version "dev" of no known commit.
func (s *suite) reproducible() error {
	dir, err := os.MkdirTemp("", "saltbite again ")
	if err != nil {
		return err
	}
	defer removeAll(dir)
	if err := os.Chmod(dir, 0o755); err != nil {
		return err
	}
	first, second := filepath.Join(dir, "first"), filepath.Join(dir, "a second folder")
	for _, folder := range []string{first, second} {
		if err := copySources(folder, s.root); err != nil {
			return err
		}
	}
	// What this user has compressed already need not be compressed by the same user again,
	// nor the largest files by the other one: the same compressor is tried on all the rest.
	if err := errors.Join(s.made.WriteTo(filepath.Join(first, "dist")), largest(s.made).WriteTo(filepath.Join(second, "dist"))); err != nil {
		return err
	}
	var here, there site.Files
	var wrongHere, wrongThere error
	var work sync.WaitGroup // for most of its time a build compresses, on one core
	work.Go(func() { here, wrongHere = site.Publish(first) })
	work.Go(func() { there, wrongThere = s.elsewhere(dir, second) })
	work.Wait()
	if err := errors.Join(wrongHere, wrongThere); err != nil {
		return err
	}
	return sameSite(here, there)
}

// largest are the files that take most of the time to compress, and their twins.
func largest(made site.Files) site.Files {
	const large = 500_000
	files := site.Files{"versions.txt": made["versions.txt"]}
	for name, body := range made {
		if len(body) > large && !strings.HasPrefix(name, "saltbite.wasm") {
			files[name] = body
		}
	}
	return files
}

// sameSite names the files that are not the same in both.
func sameSite(a, b site.Files) (differ error) {
	for _, name := range union(a, b).Names() {
		if !bytes.Equal(a[name], b[name]) {
			differ = errors.Join(differ, fmt.Errorf("dist/%s has %d bytes here, %d there, and they differ", name, len(a[name]), len(b[name])))
		}
	}
	return differ
}

// union holds the names of both.
func union(a, b site.Files) site.Files {
	all := maps.Clone(a)
	maps.Copy(all, b)
	return all
}

// nobody is the number of the user that owns nothing, on Debian and most others.
const nobody = 65534

// elsewhere makes the site in a folder as another user, for whom all is new.
func (s *suite) elsewhere(dir, folder string) (site.Files, error) {
	home := filepath.Join(dir, "home of nobody")
	for _, name := range []string{"tmp", "modules"} {
		if err := os.MkdirAll(filepath.Join(home, name), 0o755); err != nil {
			return nil, err
		}
	}
	if err := copyModules(filepath.Join(home, "modules"), s.root); err != nil {
		return nil, err
	}
	env, err := foreign(s.root, home)
	if err != nil {
		return nil, err
	}
	program := filepath.Join(dir, "build") // compiled as it is; what it makes is compiled again
	if err := copyProgram(program); err != nil {
		return nil, err
	}
	build := exec.Command("sh", "-c", `umask 077 && exec "$0"`, program)
	build.Dir = folder
	build.Env = env
	if os.Geteuid() == 0 {
		for _, path := range []string{home, folder} {
			if err := give(path, nobody); err != nil {
				return nil, err
			}
		}
		build.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: nobody, Gid: nobody}}
	} else {
		s.tally.lack("the second build by another user", "only root can be another user; it was made by this one, in a home of its own")
	}
	if said, err := build.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("the second build: %w\n%s", err, said)
	}
	return site.Read(filepath.Join(folder, "dist"))
}

// copyProgram copies this very program to where anyone may run it.
func copyProgram(to string) error {
	own, err := os.Executable()
	if err != nil {
		return err
	}
	body, err := os.ReadFile(own)
	if err != nil {
		return err
	}
	return os.WriteFile(to, body, 0o755)
}

// foreign is an environment that shares nothing with this one that need not be.
// The modules come from a folder, and the toolchain is the same one.
func foreign(root, home string) ([]string, error) {
	goroot, err := tool.Go(root, nil, "env", "GOROOT")
	if err != nil {
		return nil, err
	}
	return []string{
		"HOME=" + home, "TMPDIR=" + filepath.Join(home, "tmp"),
		"GOCACHE=" + filepath.Join(home, "cache"), "GOPATH=" + filepath.Join(home, "go"),
		"GOPROXY=file://" + strings.ReplaceAll(filepath.Join(home, "modules"), " ", "%20"), "GOTOOLCHAIN=local",
		"GOFLAGS=-tags=elsewhere", "GOAMD64=v2", "TZ=Pacific/Chatham", "LANG=tr_TR.UTF-8", "LC_ALL=C", "USER=nobody",
		"PATH=" + filepath.Join(strings.TrimSpace(goroot), "bin") + ":/usr/bin:/bin",
	}, nil
}

// copyModules copies the modules that the build needs into a folder that the go
// command can be told to fetch them from (go.dev/ref/mod, "GOPROXY protocol").
func copyModules(to, root string) error {
	cache, err := tool.Go(root, nil, "env", "GOMODCACHE")
	if err != nil {
		return err
	}
	from := filepath.Join(strings.TrimSpace(cache), "cache", "download")
	if err := tool.Run(root, nil, "go", "mod", "download"); err != nil {
		return err
	}
	said, err := tool.Go(root, nil, "list", "-m", "-f", "{{.Path}}", "all")
	if err != nil {
		return err
	}
	for _, path := range strings.Fields(said) {
		versions := filepath.Join(path, "@v")
		if _, err := os.Stat(filepath.Join(from, versions)); err != nil {
			continue // the main module, or one that nothing is used from
		}
		if err := copyTree(filepath.Join(to, versions), filepath.Join(from, versions)); err != nil {
			return err
		}
	}
	return nil
}

// copySources copies the sources to a folder, without what tests install.
func copySources(to, root string) error {
	for _, name := range sourceTree {
		if name != "site" {
			if err := copyTree(filepath.Join(to, name), filepath.Join(root, name)); err != nil {
				return err
			}
			continue
		}
		entries, err := os.ReadDir(filepath.Join(root, name))
		if err != nil {
			return err
		}
		for _, entry := range entries {
			if entry.Name() == "node_modules" {
				continue
			}
			if err := copyTree(filepath.Join(to, name, entry.Name()), filepath.Join(root, name, entry.Name())); err != nil {
				return err
			}
		}
	}
	return nil
}

func copyTree(to, from string) error {
	info, err := os.Stat(from)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
		return err
	}
	if info.IsDir() {
		return os.CopyFS(to, os.DirFS(from))
	}
	body, err := os.ReadFile(from)
	if err != nil {
		return err
	}
	return os.WriteFile(to, body, 0o644)
}

// give makes a user the owner of all in a folder.
func give(dir string, user int) error {
	return filepath.WalkDir(dir, func(path string, _ fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		return os.Lchown(path, user, user)
	})
}

// removeAll removes a folder in which the go command has kept modules, whose
// folders it makes read-only.
func removeAll(dir string) {
	filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
		if err == nil && entry.IsDir() {
			os.Chmod(path, 0o755)
		}
		return nil
	})
	os.RemoveAll(dir)
}
