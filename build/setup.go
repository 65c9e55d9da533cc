package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// tool is a program or a set of files that a check calls, and the Debian package
// that brings it.
type tool struct {
	pkg   string
	probe string // a program's name, or a pattern of paths
	use   string
}

var tools = []tool{
	{"chromium", "chromium", "the page in Chromium"},
	{"chromium-driver", "chromedriver", "the page in Chromium"},
	{"firefox-esr", "firefox-esr", "the page in Firefox"},
	{"webkit2gtk-driver", "WebKitWebDriver", "the page in WebKitGTK"},
	{"xvfb", "Xvfb", "the page in WebKitGTK"},
	{"units", "units", "units checked against GNU units"},
	{"bodr", "/usr/share/bodr/elements.xml", "atomic weights checked against the Blue Obelisk"},
	{"poppler-utils", "pdftotext", "the printed page read back"},
}

// here says whether the tool is on this machine.
func (t tool) here() bool {
	if strings.HasPrefix(t.probe, "/") {
		found, _ := filepath.Glob(t.probe)
		return len(found) > 0
	}
	_, err := exec.LookPath(t.probe)
	return err == nil
}

func lacking() []tool {
	var absent []tool
	for _, t := range tools {
		if !t.here() {
			absent = append(absent, t)
		}
	}
	return absent
}

// install brings what is missing by the system's package manager; without
// root's rights it names the command to run.
func install(absent []tool) error {
	if len(absent) == 0 {
		return nil
	}
	args := []string{"install", "-y", "--no-install-recommends"}
	for _, t := range absent {
		args = append(args, t.pkg)
	}
	line := "apt-get update && apt-get " + strings.Join(args, " ")
	if os.Geteuid() != 0 {
		return fmt.Errorf("what is missing needs root's rights; run this once:\n  sudo sh -c '%s'", line)
	}
	if _, err := exec.LookPath("apt-get"); err != nil {
		return errors.New("there is no apt-get here; what it would run:\n  " + line)
	}
	fmt.Println(line)
	for _, arguments := range [][]string{{"update"}, args} {
		cmd := exec.Command("apt-get", arguments...)
		cmd.Env = append(os.Environ(), "DEBIAN_FRONTEND=noninteractive")
		if said, err := cmd.CombinedOutput(); err != nil {
			return fmt.Errorf("apt-get %s: %w\n%s", arguments[0], err, said)
		}
	}
	if still := lacking(); len(still) > 0 {
		return fmt.Errorf("installed, and yet there is no %s", still[0].probe)
	}
	return nil
}
