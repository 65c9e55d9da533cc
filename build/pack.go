package main

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

// site is the finished site: the bytes of each file by its name in dist/, which
// says the folder too, as "embed/index.html".
type site map[string][]byte

// pack makes the whole site in memory. The same sources give the same bytes in
// any folder: nothing in it depends on a path, a clock or an order of files.
func pack(root string) (site, error) {
	return packAs(root, versionOf(root))
}

func packAs(root, version string) (site, error) {
	made := site{}
	program, err := buildProgram(root, "./wasm", version)
	if err != nil {
		return nil, err
	}
	made["saltbite.wasm"] = program

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
	if made[gone.out], err = gone.make(root, made); err != nil {
		return nil, err
	}
	as := built{Use: onSite, Version: version, Head: load(made["head.js"]), Style: load(made["style.css"]), Script: load(made["page.js"]), Old: load(made[oldest]), Icon: dataURL(made["icon.svg"])}
	err = keepOffline(root, made, offlineFiles, func(content string) ([]byte, error) {
		as.Content = content
		return pageHTML(root, as)
	})
	if err != nil {
		return nil, err
	}
	made["saltbite.d.mts"] = declarations()
	if err := made.addOneFiles(root, as); err != nil {
		return nil, err
	}
	return made, made.addGuide(root, as)
}

// dataURL is a small picture within the page.
func dataURL(svg []byte) template.URL {
	return template.URL("data:image/svg+xml," + url.PathEscape(string(bytes.TrimSpace(svg))))
}

func (s site) names() []string {
	names := make([]string, 0, len(s))
	for name := range s {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// writeTo makes dir hold just this site. A file that has not changed is not
// touched, and one that has is replaced whole, so that whoever reads it
// meanwhile reads the old or the new.
func (s site) writeTo(dir string) error {
	present, err := readSite(dir)
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
