// Words measured and broken, against the advance widths in the font's own table.
#include "drawing/render/lettering.h"

#include "drawing/render/palette.h"
#include "support/compare.h"

using namespace toehold::drawing;

TEST_CASE("Words are as wide as their letters", "[published]") {
    // DejaVu Sans, hmtx table: every figure advances 1303 of 2048 units, so ten of them at 2.9 mm are 18.45 mm.
    CHECK_CLOSE(text_width_mm("0123456789", {TextSize::small, false, false}), 10.0 * 1303.0 / 2048.0 * 2.9, 2e-3, 0.0);
    CHECK_CLOSE(text_width_mm("0123456789", {TextSize::title, false, false}), 10.0 * 1303.0 / 2048.0 * 5.6, 2e-3, 0.0);
    CHECK(text_width_mm("", {}) == 0.0);
    CHECK(text_width_mm("0123", {TextSize::small, true, false}) > text_width_mm("0123", {TextSize::small}));
    CHECK(text_width_mm("C_D", {TextSize::small, false, true}) < text_width_mm("C_D", {TextSize::small}));
}

TEST_CASE("Lines are no wider than asked, and lose no word", "[property]") {
    const std::string words = "the uplift on the anchors is what the blocking below must take and pass on";
    for (const double width : {15.0, 25.0, 60.0, 400.0}) {
        const auto lines = broken_into_lines(words, width, {});
        std::string together;
        for (const std::string& line : lines) {
            CAPTURE(line, width);
            CHECK(text_width_mm(line, {}) <= width);
            together += (together.empty() ? "" : " ") + line;
        }
        CHECK(together == words);
    }
}

TEST_CASE("A word wider than the line is cut between characters", "[property]") {
    const std::string word = "öööööööööööööööööööö";
    std::string together;
    for (const std::string& line : broken_into_lines(word, 10.0, {})) {
        CHECK(text_width_mm(line, {}) <= 10.0);
        CHECK(line.size() % 2 == 0);  // no letter is torn
        together += line;
    }
    CHECK(together == word);
    CHECK(broken_into_lines("", 10.0, {}) == std::vector<std::string>{""});
    CHECK(broken_into_lines("a\nb", 100.0, {}) == std::vector<std::string>{"a", "b"});
    CHECK(broken_into_lines("narrow", 0.1, {}).size() == 6);
}
