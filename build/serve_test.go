package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func TestListensOnAFreePortIfTheUsualIsTaken(t *testing.T) {
	first, err := listen("")
	if err != nil {
		t.Fatal(err)
	}
	defer first.Close()
	second, err := listen("")
	if err != nil {
		t.Fatal(err)
	}
	defer second.Close()
	if !strings.HasPrefix(second.Addr().String(), "127.0.0.1:") || second.Addr().String() == first.Addr().String() {
		t.Errorf("listens at %v and %v", first.Addr(), second.Addr())
	}
}

func TestChangedSourcesAreNoticed(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "site", "page.js")
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	before := sources(dir)
	if !same(before, sources(dir)) {
		t.Error("sources changed by being looked at")
	}
	later := time.Now().Add(time.Minute)
	if err := os.Chtimes(file, later, later); err != nil {
		t.Fatal(err)
	}
	if same(before, sources(dir)) {
		t.Error("a changed source was not noticed")
	}
	if err := os.Remove(file); err != nil {
		t.Fatal(err)
	}
	if same(before, sources(dir)) {
		t.Error("a removed source was not noticed")
	}
}
