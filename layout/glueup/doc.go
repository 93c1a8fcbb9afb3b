// Package glueup turns the design of an end-grain piece into strips and glue-ups:
// which strips to rip, how to glue them, how many slices to cut and how to lay
// them. It is geometry; it reads no files and draws nothing.
//
// The finished face lies in a frame of its own: x along its length to the right, y
// across its width away from you, the origin at the corner that is left and near
// when all is trimmed. The grain runs upward, out of the face.
//
// Lengths are whole nanometres. Where geometry gives a real number (the side of a
// rhombus, a slanted edge), it is corners that are rounded, each to the nearest
// nanometre, and never the sizes of pieces one after the other: a corner in which
// several blocks meet is computed once, from whole numbers that count steps of the
// pattern, so the blocks share it and leave neither gap nor overlap, however far
// from the origin. Where a corner lies within the edge of a neighbour, the two may be
// a nanometre apart. No corner is off by more than that; a saw is off by a hundred
// thousand times as much.
package glueup
