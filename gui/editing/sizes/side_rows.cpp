// What may vary of a post on a member's side: the member and what backs it, the post, its fasteners, ties.
#include "editing/fields.h"
#include "editing/sizes/range_ticks.h"

#include <algorithm>
#include <utility>

namespace toehold::editing {
namespace {

std::string length_text(double value_in, units::System system) { return shown(value_in, units::Kind::length, system); }

RangeRow plies(const Ranges& start) {
    std::vector<std::string> wanted;
    for (const int one : start.side.plies) wanted.push_back(std::to_string(one));
    Ticks ticks(wanted);
    ticks.add("1", phrase("one piece"));
    for (const int one : {2, 3, 4}) ticks.add(std::to_string(one), phrase("{} pieces", one));
    return {"plies", phrase("Member"), phrase("Pieces of the rim or joist, side by side."), ticks.taken(),
            {},      EntriesUse::none};
}

/// An empty size leaves it as it is.
RangeRow block_of_size(const char* key, Phrase title, Phrase help, const std::vector<std::string>& sizes) {
    std::vector<std::string> wanted;
    wanted.reserve(sizes.size());
    for (const std::string& size : sizes) wanted.push_back(size.empty() ? "as-is" : size);
    Ticks ticks(wanted);
    ticks.add("as-is", phrase("as in the detail"));
    for (const char* size : {"2x6", "2x8", "2x10", "2x12", "4x6", "4x8", "4x10", "4x12"})
        ticks.add(size, format::verbatim(size));
    return {key, std::move(title), std::move(help), ticks.taken(), {}, EntriesUse::none};
}

/// Hardware by the least force its report must give; 0 leaves it as it is.
RangeRow hardware(const char* key, Phrase title, Phrase help, const std::vector<double>& forces_lb,
                  units::System system) {
    const auto words = [](double force_lb) {
        return force_lb == 0.0 ? std::string("as-is") : "hardware " + plain(force_lb);
    };
    std::vector<std::string> wanted;
    wanted.reserve(forces_lb.size());
    for (const double force_lb : forces_lb) wanted.push_back(words(force_lb));
    Ticks ticks(wanted);
    ticks.add("as-is", phrase("as in the detail"));
    for (const double force_lb : forces_lb) {
        if (force_lb > 0.0)
            ticks.add(words(force_lb), phrase("hardware of {}", shown(force_lb, units::Kind::force, system)));
    }
    RangeRow row{key, std::move(title), std::move(help), ticks.taken(), {}, EntriesUse::last};
    add_run(row, "hardware", phrase("hardware of every force, as typed below"),
            run_entries(Spread{1000.0, 2000.0, 500.0}, units::Kind::force, system));
    return row;
}

RangeRow post_sizes(const Ranges& start) {
    Ticks ticks(start.side.post_sizes);
    for (const char* size : {"4x4", "4x6", "6x6"}) ticks.add(size, format::verbatim(size));
    return {"post-size", phrase("Post size"), phrase("Of a wood post, by the name it is ordered by."), ticks.taken(),
            {},          EntriesUse::none};
}

RangeRow bottoms(const Ranges& start, units::System system) {
    std::vector<std::string> wanted;
    for (const double one : start.side.post_bottoms_in) wanted.push_back(plain(one));
    Ticks ticks(wanted);
    for (const double one : start.side.post_bottoms_in)
        ticks.add(plain(one), format::verbatim(length_text(one, system)));
    RangeRow row{
        "bottom",        phrase("Bottom of the post"), phrase("Below the member's top edge."), ticks.taken(), {},
        EntriesUse::last};
    add_run(row, "", phrase("every height, as typed below"),
            run_entries(Spread{7.0, 11.0, 1.0}, units::Kind::length, system));
    return row;
}

RangeRow heights(const Ranges& start, units::System system) {
    const auto words = [](const search::RowHeights& rows) { return plain(rows.upper_in) + ":" + plain(rows.lower_in); };
    const auto label = [system](const search::RowHeights& rows) {
        return phrase("{} and {}", length_text(rows.upper_in, system), length_text(rows.lower_in, system));
    };
    std::vector<std::string> wanted;
    for (const search::RowHeights& rows : start.side.heights) wanted.push_back(words(rows));
    Ticks ticks(wanted);
    for (const search::RowHeights& rows : start.side.heights) ticks.add(words(rows), label(rows));
    for (const double upper_in : {1.5, 2.0, 2.5}) {
        for (const double lower_in : {6.0, 7.0, 8.0}) {
            const search::RowHeights rows{upper_in, lower_in};
            ticks.add(words(rows), label(rows));
        }
    }
    return {"heights",
            phrase("Heights of the fasteners"),
            phrase("Of the upper and the lower ones below the member's top edge."),
            ticks.taken(),
            {},
            EntriesUse::none};
}

RangeRow heads(const Ranges& start, units::System system) {
    using Kind = search::HeadChoice::Kind;
    const auto words = [](const search::HeadChoice& choice) {
        return choice.kind == Kind::washer ? std::string("washer")
                                           : plain(choice.side_in) + "x" + plain(choice.thickness_in);
    };
    std::vector<std::string> wanted;
    for (const search::HeadChoice& choice : start.side.heads) wanted.push_back(words(choice));
    Ticks ticks(wanted);
    ticks.add("washer", phrase("wide washer"));
    const auto add = [&](const search::HeadChoice& choice) {
        if (choice.kind != Kind::plate) return;
        ticks.add(words(choice), phrase("square plate {} by {}", length_text(choice.side_in, system),
                                        length_text(choice.thickness_in, system)));
    };
    for (const auto& [side, thick] : {std::pair{2.0, 0.25}, {3.0, 0.25}, {3.0, 0.375}}) add({Kind::plate, side, thick});
    for (const search::HeadChoice& choice : start.side.heads) add(choice);
    return {"head", phrase("Under the head"), phrase("On the post."), ticks.taken(), {}, EntriesUse::none};
}

}  // namespace

std::vector<RangeRow> side_rows(const catalog::Catalog& catalog, const Ranges& start, units::System system) {
    return {
        plies(start),
        block_of_size("behind", phrase("Block behind"), phrase("Which the fasteners go through."), start.side.behind),
        block_of_size("next-joist", phrase("Blocks to the next joist"),
                      phrase("From an end joist, to both sides of the post."), start.side.next_joist),
        hardware("rim-ends", phrase("Rim to joists"), phrase("What joins the joists' ends to the rim."),
                 start.side.rim_ends_lb, system),
        post_sizes(start),
        bottoms(start, system),
        anchor_row(catalog, start),
        length_row(start, system),
        heights(start, system),
        heads(start, system),
        backing_row(start, system, phrase("What a bolt's nut bears on behind the member.")),
        end_row(start, system),
        hardware("ties", phrase("Ties"), phrase("One at every height of fasteners, back to a joist."),
                 start.side.ties_lb, system)};
}

}  // namespace toehold::editing
