// Package render draws a checked plan for the saw: sheets of paper that a
// person reads at arm's length, in black and white.
//
// The way of a drawing is plan and steps → Scene (shapes and labels in
// millimetres of paper) → PNG. Everything that decides where a thing stands is
// in the scene, so that tests can measure it: no label may touch another, none
// may leave the page, none may be lower than MinText. Only raster.go knows the
// drawing library, only theme.go knows tones, weights and sizes.
//
// A sheet flows like a text: header, drawings, lists of steps; what does not
// fit goes to the next page, never to smaller print. A drawing lays its fixed
// things first (outline, defects, kerfs, step numbers) and then looks for free
// places for its words; a word that finds none goes outside on a leader.
package render
