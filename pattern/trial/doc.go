// Package trial drafts every option of a pick from one client's measurements,
// so that she can choose by looking: each as outlines in one frame and at one
// scale, cut to the part where the options differ.
//
// It chooses nothing and it draws nothing: screens and sheets of paper take the
// lines. The package is pure.
package trial
