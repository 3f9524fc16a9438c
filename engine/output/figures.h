#pragma once
#include "format/figures.h"

namespace toehold::output {
using format::degrees;
using format::degrees_text;
using format::Figure;
using format::figure_text;
using format::in_system;
using format::number_text;
using format::ratio_text;
}  // namespace toehold::output
