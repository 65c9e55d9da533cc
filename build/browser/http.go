package browser

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"strings"
	"time"
)

// httpWire is WebDriver as the standard has it: JSON over HTTP.
type httpWire struct{ base string }

// openHTTP waits for a driver to listen and opens a session in it.
func openHTTP(driver string, capabilities params) (httpWire, error) {
	w := httpWire{driver}
	if err := w.ready(20 * time.Second); err != nil {
		return w, err
	}
	ctx, cancel := context.WithTimeout(context.Background(), callLimit)
	defer cancel()
	value, err := w.call(ctx, command{"", "POST", "/session"}, params{"capabilities": params{"alwaysMatch": capabilities}})
	if err != nil {
		return w, err
	}
	var opened struct {
		SessionID string `json:"sessionId"`
	}
	if err := json.Unmarshal(value, &opened); err != nil {
		return w, err
	}
	w.base += "/session/" + opened.SessionID
	return w, nil
}

func (w httpWire) ready(limit time.Duration) error {
	for deadline := time.Now().Add(limit); ; time.Sleep(50 * time.Millisecond) {
		ctx, cancel := context.WithTimeout(context.Background(), 2*time.Second)
		_, err := w.call(ctx, command{"", "GET", "/status"}, nil)
		cancel()
		if err == nil {
			return nil
		}
		if time.Now().After(deadline) {
			return fmt.Errorf("the driver does not answer: %w", err)
		}
	}
}

func (w httpWire) call(ctx context.Context, c command, p params) (json.RawMessage, error) {
	path := c.path
	if id, ok := p["id"].(string); ok {
		path = strings.ReplaceAll(path, "{id}", id)
	}
	var body io.Reader
	if c.method == "POST" {
		sent, err := json.Marshal(p)
		if err != nil {
			return nil, err
		}
		body = bytes.NewReader(sent)
	}
	request, err := http.NewRequestWithContext(ctx, c.method, w.base+path, body)
	if err != nil {
		return nil, err
	}
	request.Header.Set("Content-Type", "application/json; charset=utf-8")
	response, err := http.DefaultClient.Do(request)
	if err != nil {
		return nil, err
	}
	defer response.Body.Close()
	var answer struct{ Value json.RawMessage }
	if err := json.NewDecoder(response.Body).Decode(&answer); err != nil {
		return nil, fmt.Errorf("%s %s: %w", c.method, c.path, err)
	}
	if response.StatusCode != http.StatusOK {
		var f fault
		if err := json.Unmarshal(answer.Value, &f); err != nil {
			return nil, fmt.Errorf("%s %s: %s", c.method, c.path, response.Status)
		}
		return nil, f.err()
	}
	return answer.Value, nil
}
