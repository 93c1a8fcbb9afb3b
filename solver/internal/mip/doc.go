// Package mip states small jobs as integer programs and hands them to a general
// solver for such programs, if the machine has one, so that ours can be held
// against it. Nothing that makes plans depends on it.
//
// Only plain jobs can be stated: planed boards with straight edges, without
// taper, defects and credit for offcuts, all of which every part may come from.
package mip
