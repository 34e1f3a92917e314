package lessonpage

import (
	"bufio"
	"bytes"
	"encoding/base64"
	"encoding/json"
	"image"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// browser is a real browser without a window, driven through a pipe by its
// own debugging protocol: real keys and real touches.
type browser struct {
	t       *testing.T
	to      io.Writer
	from    *bufio.Reader
	last    int
	session string
	faults  []string // what the page complained of, and what it asked the network for
}

// message is one line of the protocol, a call, an answer or an event.
type message struct {
	ID        int             `json:"id,omitempty"`
	Method    string          `json:"method,omitempty"`
	SessionID string          `json:"sessionId,omitempty"`
	Params    any             `json:"params,omitempty"`
	Result    json.RawMessage `json:"result,omitempty"`
	Error     *struct {
		Message string `json:"message"`
	} `json:"error,omitempty"`
}

// startBrowser starts one; the test is skipped where there is none.
func startBrowser(t *testing.T) *browser {
	t.Helper()
	path := ""
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome", "chrome"} {
		if found, err := exec.LookPath(name); err == nil && path == "" {
			path = found
		}
	}
	if path == "" {
		t.Skip("no browser (chromium) is here")
	}
	ours, theirs, err := os.Pipe()
	require.NoError(t, err)
	hers, mine, err := os.Pipe()
	require.NoError(t, err)
	cmd := exec.Command(path, "--headless=new", "--remote-debugging-pipe", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
		"--no-first-run", "--disable-extensions", "--disable-background-networking", "--force-device-scale-factor=1", "--user-data-dir="+t.TempDir(), "about:blank")
	cmd.ExtraFiles = []*os.File{hers, theirs}
	require.NoError(t, cmd.Start())
	require.NoError(t, hers.Close())
	require.NoError(t, theirs.Close())
	require.NoError(t, ours.SetReadDeadline(time.Now().Add(2*time.Minute)))
	b := &browser{t: t, to: mine, from: bufio.NewReaderSize(ours, 1<<20)}
	t.Cleanup(func() {
		b.session = ""
		b.call("Browser.close", nil)
		_ = cmd.Wait()
		mine.Close()
		ours.Close()
	})
	var target struct{ TargetID string }
	b.result("Target.createTarget", map[string]any{"url": "about:blank"}, &target)
	var attached struct{ SessionID string }
	b.result("Target.attachToTarget", map[string]any{"targetId": target.TargetID, "flatten": true}, &attached)
	b.session = attached.SessionID
	for _, d := range []string{"Page", "Runtime", "Log", "Network"} {
		b.call(d+".enable", nil)
	}
	return b
}

// call sends one call and waits for its answer; events on the way are looked
// at.
func (b *browser) call(method string, params map[string]any) json.RawMessage {
	b.t.Helper()
	b.last++
	if params == nil {
		params = map[string]any{}
	}
	line, err := json.Marshal(message{ID: b.last, Method: method, SessionID: b.session, Params: params})
	require.NoError(b.t, err)
	_, err = b.to.Write(append(line, 0))
	require.NoError(b.t, err)
	for {
		m, text := b.read()
		if m.ID == b.last {
			require.Nil(b.t, m.Error, "%s: %s", method, text)
			return m.Result
		}
		b.event(m, text)
	}
}

func (b *browser) read() (message, []byte) {
	b.t.Helper()
	text, err := b.from.ReadBytes(0)
	require.NoError(b.t, err)
	var m message
	require.NoError(b.t, json.Unmarshal(bytes.TrimSuffix(text, []byte{0}), &m))
	return m, text
}

func (b *browser) event(m message, text []byte) {
	switch m.Method {
	case "Runtime.exceptionThrown", "Log.entryAdded", "Runtime.consoleAPICalled":
		b.faults = append(b.faults, string(text))
	case "Network.requestWillBeSent":
		if !bytes.Contains(text, []byte(`"url":"file:`)) && !bytes.Contains(text, []byte(`"url":"about:`)) {
			b.faults = append(b.faults, string(text))
		}
	}
}

func (b *browser) result(method string, params map[string]any, into any) {
	b.t.Helper()
	require.NoError(b.t, json.Unmarshal(b.call(method, params), into))
}

// open goes to a page and waits until it stands.
func (b *browser) open(html []byte) {
	b.t.Helper()
	path := filepath.Join(b.t.TempDir(), "page.html")
	require.NoError(b.t, os.WriteFile(path, html, 0o600))
	b.call("Page.navigate", map[string]any{"url": "file://" + path})
	for {
		m, text := b.read()
		b.event(m, text)
		if m.Method == "Page.loadEventFired" {
			return
		}
	}
}

// value is what an expression gives in the page.
func (b *browser) value(expression string, into any) {
	b.t.Helper()
	var r struct {
		Result           struct{ Value json.RawMessage }
		ExceptionDetails json.RawMessage
	}
	b.result("Runtime.evaluate", map[string]any{"expression": expression, "returnByValue": true}, &r)
	require.Empty(b.t, string(r.ExceptionDetails))
	require.NoError(b.t, json.Unmarshal(r.Result.Value, into))
}

func (b *browser) text(expression string) (s string) {
	b.t.Helper()
	b.value("String("+expression+")", &s)
	return s
}

func (b *browser) size(wide, high int) {
	b.t.Helper()
	b.call("Emulation.setDeviceMetricsOverride", map[string]any{"width": wide, "height": high, "deviceScaleFactor": 1, "mobile": wide < 600})
	b.call("Emulation.setTouchEmulationEnabled", map[string]any{"enabled": true})
}

// media is what the page is shown on: screen or print, light or dark.
func (b *browser) media(kind, scheme string) {
	b.t.Helper()
	b.call("Emulation.setEmulatedMedia", map[string]any{"media": kind, "features": []map[string]string{{"name": "prefers-color-scheme", "value": scheme}}})
}

var codes = map[string]int{" ": 32, "ArrowRight": 39, "ArrowLeft": 37, "Home": 36, "End": 35, "Tab": 9, "Enter": 13}

func (b *browser) press(key string) {
	b.t.Helper()
	k := map[string]any{"type": "keyDown", "key": key, "windowsVirtualKeyCode": codes[key]}
	if key == " " || key == "Enter" {
		k["text"] = strings.ReplaceAll(key, "Enter", "\r")
	}
	b.call("Input.dispatchKeyEvent", k)
	b.call("Input.dispatchKeyEvent", map[string]any{"type": "keyUp", "key": key, "windowsVirtualKeyCode": codes[key]})
}

// swipe draws a finger across the page; a swipe of no length is a tap.
func (b *browser) swipe(x0, y0, x1, y1 int) {
	b.t.Helper()
	touch := func(kind string, points ...map[string]any) {
		if points == nil {
			points = []map[string]any{}
		}
		b.call("Input.dispatchTouchEvent", map[string]any{"type": kind, "touchPoints": points})
	}
	touch("touchStart", map[string]any{"x": x0, "y": y0})
	for k := 1; k <= 4 && (x0 != x1 || y0 != y1); k++ {
		touch("touchMove", map[string]any{"x": x0 + (x1-x0)*k/4, "y": y0 + (y1-y0)*k/4})
	}
	touch("touchEnd")
}

// tap touches the middle of an element.
func (b *browser) tap(id string) {
	b.t.Helper()
	var at [2]float64
	b.value(`(r => [r.x + r.width/2, r.y + r.height/2])(document.getElementById("`+id+`").getBoundingClientRect())`, &at)
	b.swipe(int(at[0]), int(at[1]), int(at[0]), int(at[1]))
}

// picture is a part of the page as it is seen.
func (b *browser) picture(x, y, wide, high float64) image.Image {
	b.t.Helper()
	img, err := png.Decode(bytes.NewReader(b.capture(map[string]any{"format": "png", "clip": map[string]any{"x": x, "y": y, "width": wide, "height": high, "scale": 1}})))
	require.NoError(b.t, err)
	return img
}

func (b *browser) capture(params map[string]any) []byte {
	b.t.Helper()
	var r struct{ Data string }
	b.result("Page.captureScreenshot", params, &r)
	data, err := base64.StdEncoding.DecodeString(r.Data)
	require.NoError(b.t, err)
	return data
}

// shot keeps a picture of the page where CHALKFOLD_SHOTS names a folder.
func (b *browser) shot(name string) {
	b.t.Helper()
	if dir := os.Getenv("CHALKFOLD_SHOTS"); dir != "" {
		require.NoError(b.t, os.WriteFile(filepath.Join(dir, name+".png"), b.capture(map[string]any{"format": "png"}), 0o600))
	}
}
