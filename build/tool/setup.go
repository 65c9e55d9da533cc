package tool

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// Tool is a program or a set of files that a check calls, and the Debian package
// that brings it.
type Tool struct {
	Package string
	Use     string
	probe   string // a program's name, or a pattern of paths
	quicker bool   // without it the checks only take longer
}

var tools = []Tool{
	{Package: "chromium", Use: "the page in Chromium", probe: "chromium"},
	{Package: "chromium-driver", Use: "the page in Chromium", probe: "chromedriver"},
	{Package: "chromium-headless-shell", Use: "the page in Chromium, sooner", probe: "chromium-headless-shell", quicker: true},
	{Package: "firefox-esr", Use: "the page in Firefox", probe: "firefox-esr"},
	{Package: "webkit2gtk-driver", Use: "the page in WebKitGTK", probe: "WebKitWebDriver"},
	{Package: "xvfb", Use: "the page in WebKitGTK", probe: "Xvfb"},
	{Package: "units", Use: "units checked against GNU units", probe: "units"},
	{Package: "bodr", Use: "atomic weights checked against the Blue Obelisk", probe: "/usr/share/bodr/elements.xml"},
	{Package: "poppler-utils", Use: "the printed page read back", probe: "pdftotext"},
	{Package: "librsvg2-bin", Use: "pictures of known measure, drawn from SVG", probe: "rsvg-convert"},
	{Package: "imagemagick", Use: "shares and islands of pictures checked against ImageMagick", probe: "identify"}, // convert may be another program
}

// here says whether the tool is on this machine.
func (t Tool) here() bool {
	if strings.HasPrefix(t.probe, "/") {
		found, _ := filepath.Glob(t.probe)
		return len(found) > 0
	}
	_, err := exec.LookPath(t.probe)
	return err == nil
}

// Lacking lists the tools that are not on this machine.
func Lacking() []Tool {
	var absent []Tool
	for _, t := range tools {
		if !t.here() {
			absent = append(absent, t)
		}
	}
	return absent
}

// Install brings what is missing by the system's package manager; without
// root's rights it names the command to run. What only makes the checks quicker may
// stay missing: not every release has it.
func Install(absent []Tool) error {
	if err := install(thatAre(false, absent)); err != nil {
		return err
	}
	if err := install(thatAre(true, absent)); err != nil {
		fmt.Println("the checks take longer:", err)
	}
	if still := thatAre(false, Lacking()); len(still) > 0 {
		return fmt.Errorf("installed, and yet there is no %s", still[0].probe)
	}
	return nil
}

// thatAre are those of some tools that only make the checks quicker, or those that
// they need.
func thatAre(quicker bool, all []Tool) []Tool {
	return slices.DeleteFunc(slices.Clone(all), func(t Tool) bool { return t.quicker != quicker })
}

// install brings some tools.
func install(absent []Tool) error {
	if len(absent) == 0 {
		return nil
	}
	args := []string{"install", "--no-install-recommends", "-y"}
	for _, t := range absent {
		args = append(args, t.Package)
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
	return nil
}
