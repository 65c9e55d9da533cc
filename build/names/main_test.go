package main

import (
	"bytes"
	"os"
	"testing"
)

func TestNamesAreCurrent(t *testing.T) {
	want, err := names()
	if err != nil {
		t.Fatal(err)
	}
	got, err := os.ReadFile("../../calc/field/names.go")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Error("calc/field/names.go is not what the tables give: run go generate ./calc/field")
	}
}
