#pragma once
// A sheet on a Cairo surface: the one way from scenes to paper, for every kind of file and for print.
#include "paper/sheet.h"

typedef struct _cairo cairo_t;

namespace toehold::paper {

inline constexpr double points_per_mm = 72.0 / 25.4;

/// `units_per_mm`: of the surface. Throws std::runtime_error when the surface is in error.
void paint(cairo_t* cairo, const Sheet& sheet, double units_per_mm);

}  // namespace toehold::paper
