#pragma once
// One function for every kind of block: sets it at the cursor, and moves the cursor below it.
#include "paper/layout/pages.h"

namespace toehold::paper::layout {

void set(Pages& pages, const Heading& heading);
void set(Pages& pages, const Paragraph& paragraph);
void set(Pages& pages, const Table& table);
void set(Pages& pages, const Facts& facts);
void set(Pages& pages, const Verdict& verdict);
void set(Pages& pages, const Figure& figure);
void set(Pages& pages, const Space& space);
void set(Pages& pages, const Room& room);

}  // namespace toehold::paper::layout
