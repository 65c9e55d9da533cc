package site

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"saltbite/build/tool"
)

// known are the licences of the modules that the site may be made of or with, by
// their names in the SPDX list, each with words of its text to recognise it by.
// A module that is not among them stops the build until somebody has read its
// licence.
var known = map[string]licence{
	goModule:                          {"BSD-3-Clause", "Redistribution and use in source and binary forms"},
	"github.com/agnivade/levenshtein": {"MIT", "Permission is hereby granted, free of charge"},
	"github.com/hack-pad/safejs":      {"Apache-2.0", "Apache License"},
	"github.com/andybalholm/brotli":   {"MIT", "Permission is hereby granted, free of charge"},
	"github.com/evanw/esbuild":        {"MIT", "Permission is hereby granted, free of charge"},
	"golang.org/x/sys":                {"BSD-3-Clause", "Redistribution and use in source and binary forms"},
	"gonum.org/v1/gonum":              {"BSD-3-Clause", "Redistribution and use in source and binary forms"},
}

// goModule is the name under which Go itself, its library and wasm_exec.js stand.
const goModule = "go"

type licence struct{ name, words string }

// module is a module as the go command lists it. Dir is where its files are.
type module struct{ Path, Version, Dir string }

// materials are what the site is made of and made with.
type materials struct{ shipped, tools []module }

// materialsOf asks the go command which modules are part of the program, and which
// others the build uses, of which nothing is in the site.
func materialsOf(root string) (materials, error) {
	goSelf, err := goAsModule(root)
	if err != nil {
		return materials{}, err
	}
	shipped, err := modulesOf(root, tool.ForWasm, "./wasm")
	if err != nil {
		return materials{}, err
	}
	all, err := modulesOf(root, nil, "./build/site")
	if err != nil {
		return materials{}, err
	}
	tools := slices.DeleteFunc(all, func(m module) bool { return slices.Contains(shipped, m) })
	return materials{shipped: append([]module{goSelf}, shipped...), tools: tools}, nil
}

// goAsModule is the toolchain that compiles.
func goAsModule(root string) (module, error) {
	said, err := tool.Go(root, nil, "env", "GOVERSION", "GOROOT")
	version, dir, _ := strings.Cut(strings.TrimSpace(said), "\n")
	return module{goModule, strings.TrimPrefix(version, "go"), dir}, err
}

// modulesOf lists the modules that a package is made of, by path, without its own.
func modulesOf(root string, env []string, pkg string) ([]module, error) {
	said, err := tool.Go(root, env, "list", "-deps", "-json=Module", pkg)
	if err != nil {
		return nil, err
	}
	var all []module
	for decoder := json.NewDecoder(strings.NewReader(said)); decoder.More(); {
		var p struct {
			Module *struct {
				module
				Main bool
			}
		}
		if err := decoder.Decode(&p); err != nil {
			return nil, err
		}
		if p.Module != nil && !p.Module.Main && !slices.Contains(all, p.Module.module) {
			all = append(all, p.Module.module)
		}
	}
	slices.SortFunc(all, func(a, b module) int { return strings.Compare(a.Path, b.Path) })
	return all, nil
}

// licences is licences.txt: the full text of the site's own licence and of that
// of each module that is part of it.
func (p materials) licences(root string) ([]byte, error) {
	own, err := os.ReadFile(filepath.Join(root, "LICENSE"))
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	b.WriteString("Saltbite, and the licences of what it is made of.\n\n")
	chapter(&b, "Saltbite: BSD-3-Clause", own)
	for _, m := range p.shipped {
		text, err := m.licence()
		if err != nil {
			return nil, err
		}
		title := m.Path + " " + m.Version
		if m.Path == goModule {
			title = "Go " + m.Version + ", its library and wasm_exec.js"
		}
		chapter(&b, title+": "+known[m.Path].name, text)
	}
	return b.Bytes(), nil
}

func chapter(b *bytes.Buffer, title string, text []byte) {
	fmt.Fprintf(b, "%s\n%s\n\n%s\n\n", title, strings.Repeat("=", len(title)), bytes.TrimSpace(text))
}

// licence reads the module's licence, and what it grants or notes beside it.
func (m module) licence() ([]byte, error) {
	expected, ok := known[m.Path]
	if !ok {
		return nil, fmt.Errorf("nobody has said what the licence of %s is; read it and name it in build/site/licences.go", m.Path)
	}
	var text []byte
	for _, pattern := range []string{"LICENSE*", "License*", "PATENTS", "NOTICE*"} {
		found, err := filepath.Glob(filepath.Join(m.Dir, pattern))
		if err != nil {
			return nil, err
		}
		for _, path := range found {
			more, err := os.ReadFile(path)
			if err != nil {
				return nil, err
			}
			text = append(append(text, bytes.TrimSpace(more)...), "\n\n"...)
		}
	}
	if !bytes.Contains(text, []byte(expected.words)) {
		return nil, errors.New(m.Path + " has no text of the licence " + expected.name + " in its folder")
	}
	return text, nil
}
