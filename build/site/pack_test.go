package site

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"
)

func TestSiteOnDiskIsJustTheSite(t *testing.T) {
	dir := t.TempDir()
	old := Files{"old.js": nil, "old/folder/in.js": nil, "embed": []byte("was a file"), "page.js/old": []byte("was a folder")}
	if err := old.WriteTo(dir); err != nil {
		t.Fatal(err)
	}
	made := Files{"index.html": []byte("page"), "page.js": []byte("script"), "embed/index.html": []byte("page")}
	for range 2 {
		if err := made.WriteTo(dir); err != nil {
			t.Fatal(err)
		}
	}
	read, err := Read(dir)
	if err != nil || fmt.Sprint(read) != fmt.Sprint(made) {
		t.Errorf("on disk is %v, %v", read.Names(), err)
	}
	if _, err := os.Stat(filepath.Join(dir, "old")); err == nil {
		t.Error("an empty folder is left")
	}
}
