// Package browser drives a real browser from Go tests. One Session in the shape
// of W3C WebDriver serves three engines; each has its own starter:
//
//	Chromium   chromedriver, which also passes on Chromium's own protocol (DevTools)
//	Firefox    its own remote protocol, Marionette: the same commands over a socket
//	WebKitGTK  WebKitWebDriver under an Xvfb of its own: the nearest to a tablet's Safari
//
// A method that an engine doesn't have returns ErrNotHere. Every call has a time
// limit, every process is ended by its id, and every profile is new, or emptied, and
// deleted in the end.
package browser

import (
	"context"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"time"
)

// callLimit ends a call to a browser that hangs.
const callLimit = 60 * time.Second

// ErrNotHere is what a method returns in an engine that has no such thing.
var ErrNotHere = errors.New("this engine can't do that")

// ErrMissing is what Start returns where the engine is not installed.
var ErrMissing = errors.New("is not installed")

// Names of the engines that can be started.
const (
	Chromium = "Chromium"
	Firefox  = "Firefox"
	WebKit   = "WebKitGTK"
)

// Names lists all of them.
var Names = []string{Chromium, Firefox, WebKit}

// Options are what an engine must know when it starts.
type Options struct {
	Dark bool // the person asked for a dark scheme
	// Profile is a folder in which the browser keeps what it keeps, for the next
	// session as well; without one it is new and goes with the session. WebKitGTK
	// keeps nothing while it is driven: ErrNotHere.
	Profile string
	// Pictures says that Screenshot will be called: WebKitGTK then composites, which
	// costs each page a quarter more of a processor.
	Pictures bool
	// Sparing has the engine compile WebAssembly once, and not again for speed: a page
	// that lives for a second then costs a tenth less of a processor. Chromium also
	// does without the browser round the engine, and Firefox paints fewer frames.
	Sparing bool
}

// Start starts an engine.
func Start(name string, o Options) (*Session, error) {
	start, known := map[string]func(Options) (*Session, error){
		Chromium: startChromium, Firefox: startFirefox, WebKit: startWebKit,
	}[name]
	if !known {
		return nil, fmt.Errorf("no engine %q", name)
	}
	s, err := start(o)
	if err != nil {
		return nil, fmt.Errorf("start %s: %w", name, err)
	}
	s.Name = name
	err = s.do(command{"WebDriver:SetTimeouts", "POST", "/timeouts"},
		params{"script": 30000, "pageLoad": 30000, "implicit": 0}, nil)
	if err != nil {
		s.Close()
		return nil, fmt.Errorf("start %s: %w", name, err)
	}
	return s, nil
}

// Session is one browser window.
type Session struct {
	Name string

	wire    wire
	console func() ([]string, error) // what was written to the console since the last call
	scheme  func(dark bool) error
	forced  func() error
	sheet   func() ([]byte, error)
	renew   func() error // makes it as if it were new; nil where to start anew is as quick
	ends    []func()     // what Close undoes, last first
}

// command is one WebDriver command as each wire names it.
type command struct{ marionette, method, path string }

type params map[string]any

// wire carries commands to a browser and brings back the value of its answer.
type wire interface {
	call(ctx context.Context, c command, p params) (json.RawMessage, error)
}

// Close ends the browser and removes what it left.
func (s *Session) Close() {
	for i := len(s.ends) - 1; i >= 0; i-- {
		s.ends[i]()
	}
	s.ends = nil
}

// Navigate loads a page and waits for its load event.
func (s *Session) Navigate(url string) error {
	return s.do(command{"WebDriver:Navigate", "POST", "/url"}, params{"url": url}, nil)
}

// Tab is the handle of the tab that commands go to.
func (s *Session) Tab() (handle string, err error) {
	return handle, s.do(command{"WebDriver:GetWindowHandle", "GET", "/window"}, params{}, &handle)
}

// NewTab opens another tab and returns its handle; commands go on to the one that
// they went to.
func (s *Session) NewTab() (string, error) {
	var made struct{ Handle string }
	err := s.do(command{"WebDriver:NewWindow", "POST", "/window/new"}, params{"type": "tab"}, &made)
	return made.Handle, err
}

// SwitchTo lets commands go to another tab.
func (s *Session) SwitchTo(tab string) error {
	return s.do(command{"WebDriver:SwitchToWindow", "POST", "/window"}, params{"handle": tab}, nil)
}

// CloseTab closes the tab that commands go to; they must then be let go to another.
func (s *Session) CloseTab() error {
	return s.do(command{"WebDriver:CloseWindow", "DELETE", "/window"}, params{}, nil)
}

// Execute runs the body of a function in the page; arguments are its arguments,
// and what it returns is the result. A promise is waited for.
func (s *Session) Execute(script string, args ...any) (any, error) {
	var result any
	return result, s.ExecuteTo(&result, script, args...)
}

// ExecuteTo is Execute with the result decoded into what to points at.
func (s *Session) ExecuteTo(to any, script string, args ...any) error {
	if args == nil {
		args = []any{}
	}
	return s.do(command{"WebDriver:ExecuteScript", "POST", "/execute/sync"}, params{"script": script, "args": args}, to)
}

// ExecuteAsync runs the body of a function whose last argument is a function
// that takes the result.
func (s *Session) ExecuteAsync(to any, script string, args ...any) error {
	if args == nil {
		args = []any{}
	}
	return s.do(command{"WebDriver:ExecuteAsyncScript", "POST", "/execute/async"}, params{"script": script, "args": args}, to)
}

// Wait runs an expression in the page until it is true, for at most the limit. To ask
// costs three processes some milliseconds, which the page lacks while it loads: it is
// asked less and less often.
func (s *Session) Wait(limit time.Duration, expression string, args ...any) error {
	pause := 10 * time.Millisecond
	for deadline := time.Now().Add(limit); ; time.Sleep(pause) {
		pause = min(pause*3/2, 200*time.Millisecond)
		var held bool
		err := s.ExecuteTo(&held, "return !!("+expression+")", args...)
		if held {
			return nil
		}
		if time.Now().After(deadline) {
			return fmt.Errorf("not in %v: %s (%v)", limit, expression, err)
		}
	}
}

// Enter makes what follows happen in the frame that the body of a function
// returns; Leave makes it happen in the whole page again.
func (s *Session) Enter(script string, args ...any) error {
	frame, err := s.Execute(script, args...)
	if err != nil {
		return err
	}
	return s.do(switchToFrame, params{"id": frame}, nil)
}

func (s *Session) Leave() error { return s.do(switchToFrame, params{"id": nil}, nil) }

var switchToFrame = command{"WebDriver:SwitchToFrame", "POST", "/frame"}

// Element is an element of the page.
type Element struct {
	s  *Session
	id string
}

// elementKey is what the standard names the reference of an element.
const elementKey = "element-6066-11e4-a52e-4f735466cecf"

// Find finds the first element of a CSS selector.
func (s *Session) Find(selector string) (*Element, error) {
	var found map[string]string
	err := s.do(command{"WebDriver:FindElement", "POST", "/element"},
		params{"using": "css selector", "value": selector}, &found)
	if err != nil {
		return nil, fmt.Errorf("find %s: %w", selector, err)
	}
	return &Element{s, found[elementKey]}, nil
}

// Argument is the element as an argument of Execute.
func (e *Element) Argument() any { return map[string]string{elementKey: e.id} }

// Click scrolls to the element and presses in its middle.
func (e *Element) Click() error {
	return e.s.do(command{"WebDriver:ElementClick", "POST", "/element/{id}/click"}, params{"id": e.id}, nil)
}

// Type focuses the element and types after what it holds.
func (e *Element) Type(text string) error {
	return e.s.do(command{"WebDriver:ElementSendKeys", "POST", "/element/{id}/value"}, params{"id": e.id, "text": text}, nil)
}

// Keys as the standard numbers them, for Press and Type.
const (
	Tab       = "\ue004"
	Enter     = "\ue007"
	Shift     = "\ue008"
	Escape    = "\ue00c"
	ArrowLeft = "\ue012"
	ArrowUp   = "\ue013"
	ArrowDown = "\ue015"
	Backspace = "\ue003"
	Space     = " "
)

// Press presses keys one after the other, wherever the focus is; a Shift holds
// until the end.
func (s *Session) Press(keys string) error {
	var steps []params
	held := ""
	for _, key := range keys {
		steps = append(steps, params{"type": "keyDown", "value": string(key)})
		if string(key) == Shift {
			held = Shift
			continue
		}
		steps = append(steps, params{"type": "keyUp", "value": string(key)})
	}
	if held != "" {
		steps = append(steps, params{"type": "keyUp", "value": held})
	}
	return s.do(command{"WebDriver:PerformActions", "POST", "/actions"},
		params{"actions": []params{{"type": "key", "id": "keys", "actions": steps}}}, nil)
}

// Hold presses on a place of the window, in CSS pixels, until Lift.
func (s *Session) Hold(x, y int) error {
	return s.point(params{"type": "pointerMove", "duration": 0, "x": x, "y": y, "origin": "viewport"}, params{"type": "pointerDown", "button": 0})
}

// Drag presses on a place of the window and moves what is held to another, through
// one between, until Lift. One engine forgets between two commands that a button is held.
func (s *Session) Drag(fromX, fromY, toX, toY int) error {
	to := func(x, y, duration int) params {
		return params{"type": "pointerMove", "duration": duration, "x": x, "y": y, "origin": "viewport"}
	}
	return s.point(to(fromX, fromY, 0), params{"type": "pointerDown", "button": 0}, to((fromX+toX)/2, (fromY+toY)/2, 20), to(toX, toY, 20))
}

// Lift ends the press.
func (s *Session) Lift() error { return s.point(params{"type": "pointerUp", "button": 0}) }

func (s *Session) point(steps ...params) error {
	return s.do(command{"WebDriver:PerformActions", "POST", "/actions"}, params{"actions": []params{
		{"type": "pointer", "id": "hand", "parameters": params{"pointerType": "mouse"}, "actions": steps}}}, nil)
}

// SetWindow makes the page's own area so large, in CSS pixels. A window has a
// least width of its own: then it says what was reached.
func (s *Session) SetWindow(width, height int) error {
	w, h := width, height
	for range 3 {
		err := s.do(command{"WebDriver:SetWindowRect", "POST", "/window/rect"},
			params{"width": w, "height": h, "x": 0, "y": 0}, nil)
		if err != nil {
			return err
		}
		inner, err := s.inner()
		if err != nil {
			return err
		}
		if inner == [2]int{width, height} {
			return nil
		}
		w, h = w+width-inner[0], h+height-inner[1]
	}
	inner, err := s.inner()
	if err == nil && inner != [2]int{width, height} {
		err = fmt.Errorf("asked for a window of %d by %d, got %d by %d", width, height, inner[0], inner[1])
	}
	return err
}

// inner is the page's own area, once a change of it has been laid out.
func (s *Session) inner() (size [2]int, err error) {
	err = s.ExecuteAsync(&size, `const done = arguments[0];
		setTimeout(() => requestAnimationFrame(() => done([innerWidth, innerHeight])), 100)`)
	return size, err
}

// Screenshot is the window as a PNG, after what was changed has been painted.
func (s *Session) Screenshot() ([]byte, error) {
	settle := `const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => done(true)))`
	if err := s.ExecuteAsync(nil, settle); err != nil {
		return nil, err
	}
	return s.bytes(command{"WebDriver:TakeScreenshot", "GET", "/screenshot"}, params{"full": false})
}

// Print is the page as a PDF, in its print style.
func (s *Session) Print() ([]byte, error) {
	if s.Name == WebKit {
		return nil, ErrNotHere
	}
	return s.bytes(command{"WebDriver:Print", "POST", "/print"}, params{})
}

// PrintSheet is the page as a PDF on the sheet of paper that its own style asks
// for.
func (s *Session) PrintSheet() ([]byte, error) {
	if s.sheet == nil {
		return nil, ErrNotHere
	}
	return s.sheet()
}

// Console is what was written to the console since the last call, mistakes in
// scripts and refused requests included.
func (s *Session) Console() ([]string, error) { return s.console() }

// Dark chooses the colour scheme that the person asked for, where an engine can
// change it while it runs.
func (s *Session) Dark(dark bool) error {
	if s.scheme == nil {
		return ErrNotHere
	}
	return s.scheme(dark)
}

// ForceColours has pages shown in the colours of the system, where an engine can be
// told to while it runs.
func (s *Session) ForceColours() error {
	if s.forced == nil {
		return ErrNotHere
	}
	return s.forced()
}

// DevTools sends a command of Chromium's own protocol.
func (s *Session) DevTools(method string, p map[string]any) error {
	return s.DevToolsTo(nil, method, p)
}

// DevToolsTo is DevTools with the result decoded into what to points at.
func (s *Session) DevToolsTo(to any, method string, p map[string]any) error {
	if s.Name != "" && s.Name != Chromium {
		return ErrNotHere
	}
	if p == nil {
		p = map[string]any{}
	}
	return s.do(command{"", "POST", "/goog/cdp/execute"}, params{"cmd": method, "params": p}, to)
}

func (s *Session) bytes(c command, p params) ([]byte, error) {
	var encoded string
	if err := s.do(c, p, &encoded); err != nil {
		return nil, err
	}
	return base64.StdEncoding.DecodeString(encoded)
}

func (s *Session) do(c command, p params, to any) error {
	ctx, cancel := context.WithTimeout(context.Background(), callLimit)
	defer cancel()
	value, err := s.wire.call(ctx, c, p)
	if err != nil || to == nil {
		return err
	}
	return json.Unmarshal(value, to)
}

// fault is an error as WebDriver tells it.
type fault struct {
	Error      string `json:"error"`
	Message    string `json:"message"`
	StackTrace string `json:"stacktrace"`
}

func (f fault) err() error {
	message, _, _ := strings.Cut(f.Message, "\n")
	return fmt.Errorf("%s: %s", f.Error, message)
}
