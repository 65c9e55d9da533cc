package site

import (
	"bytes"
	"errors"
	"fmt"
	"html/template"
	"io/fs"
	"maps"
	"net/url"
	"os"
	"path/filepath"
	"slices"
)

// Files is the finished site: the bytes of each file by its name in dist/, which
// says the folder too, as "embed/index.html".
type Files map[string][]byte

// pack makes the whole site in memory. The same sources give the same bytes in
// any folder: nothing in it depends on a path, a clock or an order of files.
func pack(root, version string) (Files, error) {
	made := Files{}
	program, err := BuildProgram(root, "./wasm", version)
	if err != nil {
		return nil, err
	}
	made["saltbite.wasm"] = program
	if made["long.wasm"], err = BuildProgram(root, "./wasm", version, "long"); err != nil {
		return nil, err
	}

	for _, b := range bundles {
		if made[b.out], err = b.make(root, made); err != nil {
			return nil, err
		}
	}
	if made["style.css"], err = styleSheet(root); err != nil {
		return nil, err
	}
	maps.Copy(made, icons())
	if made[manifestName], err = os.ReadFile(filepath.Join(root, "site", "offline", manifestName)); err != nil {
		return nil, err
	}
	for _, name := range screenshots {
		if made[name], err = os.ReadFile(filepath.Join(root, "site", name)); err != nil {
			return nil, err
		}
	}
	if made[gone.out], err = gone.make(root, made); err != nil {
		return nil, err
	}
	as := built{Use: onSite, Version: version, Head: load(made["head.js"]), Style: load(made["style.css"]), Script: load(made["page.js"]), Old: load(made[Old]), Icon: dataURL(made["icon.svg"])}
	if err := made.addClass(root, as); err != nil {
		return nil, err
	}
	err = KeepOffline(root, made, OfflineFiles, func(content string) ([]byte, error) {
		as.Content = content
		return pageHTML(root, as)
	})
	if err != nil {
		return nil, err
	}
	made["saltbite.d.mts"] = declarations()
	made["embed.d.ts"] = elementDeclarations()
	if err := made.addOneFiles(root, as); err != nil {
		return nil, err
	}
	return made, made.addGuide(root, as)
}

// dataURL is a small picture within the page.
func dataURL(svg []byte) template.URL {
	return template.URL("data:image/svg+xml," + url.PathEscape(string(bytes.TrimSpace(svg))))
}

// Names lists the files in order.
func (s Files) Names() []string {
	names := make([]string, 0, len(s))
	for name := range s {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// WriteTo makes dir hold just this site. A file that has not changed is not
// touched. One that has changed is replaced in one step, so that a reader gets the
// old file or the new one, never a part.
func (s Files) WriteTo(dir string) error {
	present, err := Read(dir)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	for name := range present {
		if _, wanted := s[name]; !wanted {
			if err := os.Remove(filepath.Join(dir, filepath.FromSlash(name))); err != nil {
				return err
			}
		}
	}
	if err := removeEmptyFolders(dir); err != nil {
		return err
	}
	for name, body := range s {
		if err := replace(filepath.Join(dir, filepath.FromSlash(name)), body); err != nil {
			return err
		}
	}
	return nil
}

// removeEmptyFolders removes the folders in dir that hold nothing, from the
// innermost outwards.
func removeEmptyFolders(dir string) error {
	entries, err := os.ReadDir(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	for _, entry := range entries {
		if !entry.IsDir() {
			continue
		}
		folder := filepath.Join(dir, entry.Name())
		err = errors.Join(err, removeEmptyFolders(folder))
		if left, _ := os.ReadDir(folder); len(left) == 0 {
			err = errors.Join(err, os.Remove(folder))
		}
	}
	return err
}

func replace(path string, body []byte) error {
	if old, err := os.ReadFile(path); err == nil && bytes.Equal(old, body) {
		return nil
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	if err := os.WriteFile(path+".new", body, 0o644); err != nil {
		return fmt.Errorf("write %s: %w", filepath.Base(path), err)
	}
	return os.Rename(path+".new", path)
}

// Read reads the files of dir and of its folders.
func Read(dir string) (Files, error) {
	made := Files{}
	err := filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		name, err := filepath.Rel(dir, path)
		if err == nil {
			made[filepath.ToSlash(name)], err = os.ReadFile(path)
		}
		return err
	})
	return made, err
}
