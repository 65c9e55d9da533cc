package site

import (
	"bytes"
	"os"
	"testing"
)

func TestReadmeHasTheTablesAsTheyAre(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	fresh, err := withTables(readme)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(fresh, readme) {
		t.Error("README.md has another table of fields than the vocabulary; go run ./build writes it")
	}
}
