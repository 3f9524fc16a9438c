#pragma once
// Marks English words that the window shows, for the translator's tools; the rooms without a toolkit leave them as they
// are.
#define TOEHOLD_MARK(words) words
