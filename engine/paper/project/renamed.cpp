#include "paper/project/renamed.h"

#include <utility>

namespace toehold::paper::project {
namespace {

struct Rename {
    const std::string& prefix;

    void operator()(Heading& heading) const {
        heading.level = 2;
        heading.name = prefix + heading.name;
    }
    void operator()(Paragraph& paragraph) const { link(paragraph.link); }
    void operator()(Table& table) const {
        for (std::vector<Cell>& row : table.rows) {
            for (Cell& cell : row) link(cell.link);
        }
    }
    template <class Other>
    void operator()(Other&) const {}

  private:
    void link(std::string& name) const {
        if (!name.empty()) name = prefix + name;
    }
};

}  // namespace

void append_renamed(report::Blocks& blocks, report::Blocks added, const std::string& prefix) {
    for (Block& block : added) {
        std::visit(Rename{prefix}, block);
        blocks.push_back(std::move(block));
    }
}

}  // namespace toehold::paper::project
