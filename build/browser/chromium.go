package browser

import (
	"os/exec"
	"strconv"
)

// shell is the same engine without a browser round it: to start costs it 0.9 s of a
// processor in the place of 3 s, and to open the page a third less.
const shell = "chromium-headless-shell"

// startChromium starts Chromium under its driver, or, where it is to be sparing, its
// shell, if that is installed. It runs without a sandbox because a test machine's root
// can have none; it only ever loads our own page.
func startChromium(o Options) (*Session, error) {
	s := &Session{}
	port, err := freePort()
	if err != nil {
		return nil, err
	}
	// The driver makes the profile, and leaves it where it is ended too soon.
	dir, remove, err := profile("")
	if err != nil {
		return nil, err
	}
	s.ends = append(s.ends, remove)
	driver, err := launch(nil, []string{"TMPDIR=" + dir}, "chromedriver", "--port="+strconv.Itoa(port))
	if err != nil {
		s.Close()
		return nil, err
	}
	s.ends = append(s.ends, driver.end)
	args := []string{"--headless", "--no-sandbox", "--disable-gpu", "--disable-quic",
		"--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
		"--disable-dev-shm-usage"}
	if o.Profile != "" {
		args = append(args, "--user-data-dir="+o.Profile)
	}
	options := params{}
	if o.Sparing {
		args = append(args, "--js-flags=--liftoff-only")
		if binary, err := exec.LookPath(shell); err == nil {
			options["binary"] = binary
		}
	}
	options["args"] = args
	wire, err := openHTTP("http://127.0.0.1:"+strconv.Itoa(port), params{
		"browserName":        "chrome",
		"goog:chromeOptions": options,
		"goog:loggingPrefs":  params{"browser": "ALL"},
	})
	if err != nil {
		s.Close()
		return nil, err
	}
	s.wire = wire
	s.ends = append(s.ends, func() { s.do(command{"", "DELETE", ""}, nil, nil) })
	s.console = func() ([]string, error) { return chromiumConsole(s) }
	s.scheme = func(dark bool) error { return chromiumScheme(s, dark) }
	s.forced = func() error { return chromiumMedia(s, "forced-colors", "active") }
	s.sheet = func() ([]byte, error) { return chromiumSheet(s) }
	if err := s.scheme(o.Dark); err != nil {
		s.Close()
		return nil, err
	}
	return s, nil
}

func chromiumConsole(s *Session) ([]string, error) {
	var entries []struct{ Level, Source, Message string }
	err := s.do(command{"", "POST", "/se/log"}, params{"type": "browser"}, &entries)
	messages := make([]string, len(entries))
	for i, e := range entries {
		messages[i] = e.Level + " " + e.Source + ": " + e.Message
	}
	return messages, err
}

func chromiumScheme(s *Session, dark bool) error {
	scheme := "light"
	if dark {
		scheme = "dark"
	}
	return chromiumMedia(s, "prefers-color-scheme", scheme)
}

// chromiumMedia has the page asked for in one way, and in no other.
func chromiumMedia(s *Session, name, value string) error {
	return s.DevTools("Emulation.setEmulatedMedia", map[string]any{"features": []params{{"name": name, "value": value}}})
}

func chromiumSheet(s *Session) ([]byte, error) {
	var document struct{ Data []byte }
	err := s.DevToolsTo(&document, "Page.printToPDF", params{"preferCSSPageSize": true})
	return document.Data, err
}
