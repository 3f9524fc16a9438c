// evaluate_detail FILE: the JSON of one detail's review without assumptions and remedies, each of which reviews it
// again. Exit status 2, with what is wrong on the error stream, where the file cannot be reviewed.
#include "export/json/review_json.h"
#include "format/phrase.h"
#include "review/review.h"
#include "support/shipped.h"
#include "xml/detail/detail_file.h"

#include <exception>
#include <iostream>

using namespace toehold;

namespace {

constexpr int unusable = 2;

int evaluate(const char* file) {
    const xml::DetailRead read = xml::read_detail(file);
    if (!read.detail) {
        for (const model::Problem& problem : read.problems) std::cerr << format::english(problem.message) << '\n';
        return unusable;
    }
    std::cout << exporting::review_json(review::evaluate(test::resolved_by_shipped(*read.detail), ""));
    return 0;
}

}  // namespace

int main(int count, char** words) {
    if (count != 2) {
        std::cerr << "usage: evaluate_detail FILE\n";
        return unusable;
    }
    try {
        return evaluate(words[1]);
    } catch (const std::exception& error) {
        std::cerr << error.what() << '\n';
        return unusable;
    }
}
