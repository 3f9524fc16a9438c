// What may vary of the anchors and the blocks' ends, whatever the mount.
#include "editing/fields.h"
#include "editing/sizes/range_ticks.h"

#include <algorithm>
#include <utility>

namespace toehold::editing {

RangeRow anchor_row(const catalog::Catalog& catalog, const Ranges& start) {
    std::vector<std::string> wanted;
    for (const search::AnchorChoice& choice : start.anchors)
        wanted.push_back(choice.grade.empty() ? choice.size : choice.size + " " + choice.grade);
    Ticks ticks(wanted);
    for (const auto& size : catalog.lag_screws) ticks.add(size.id, format::verbatim(size.name));
    for (const auto& size : catalog.bolts) {
        for (const auto& grade : catalog.bolt_grades)
            ticks.add(size.id + " " + grade.id, phrase("{}, {}", size.name, grade.name));
    }
    for (const auto& size : catalog.wood_screws) ticks.add(size.id, format::verbatim(size.name));
    return {"anchor", phrase("Anchors"), phrase("Lag screws, bolts and threaded rods, wood screws."), ticks.taken(),
            {},       EntriesUse::none};
}

RangeRow length_row(const Ranges& start, units::System system) {
    std::vector<std::string> wanted;
    for (const double one : start.lengths_in) wanted.push_back(plain(one));
    Ticks ticks(wanted);
    for (const double one : start.lengths_in)
        ticks.add(plain(one), format::verbatim(shown(one, units::Kind::length, system)));
    RangeRow row{"length",
                 phrase("Screw length"),
                 phrase("Of lag and wood screws; a bolt is as long as it must be."),
                 ticks.taken(),
                 {},
                 EntriesUse::last};
    add_run(row, "", phrase("every length, as typed below"),
            run_entries(Spread{4.0, 10.0, 1.0}, units::Kind::length, system));
    return row;
}

RangeRow backing_row(const Ranges& start, units::System system, Phrase help) {
    using Kind = search::BackingChoice::Kind;
    const auto words = [](const search::BackingChoice& choice) -> std::string {
        if (choice.kind == Kind::none) return "none";
        if (choice.kind == Kind::wide_washer) return "washer";
        return plain(choice.side_in) + "x" + plain(choice.thickness_in);
    };
    std::vector<std::string> wanted;
    for (const search::BackingChoice& choice : start.backings) wanted.push_back(words(choice));
    Ticks ticks(wanted);
    ticks.add("none", phrase("none"));
    ticks.add("washer", phrase("wide washer"));
    const auto add = [&](const search::BackingChoice& choice) {
        if (choice.kind != Kind::plate) return;
        const auto text = [system](double value) { return shown(value, units::Kind::length, system); };
        ticks.add(words(choice), phrase("square plate {} by {}", text(choice.side_in), text(choice.thickness_in)));
    };
    for (const auto& [side, thick] : {std::pair{2.0, 0.25}, {3.0, 0.25}, {3.0, 0.375}, {4.0, 0.375}})
        add({Kind::plate, side, thick});
    for (const search::BackingChoice& choice : start.backings) add(choice);
    return {"backing", phrase("Under the nut"), std::move(help), ticks.taken(), {}, EntriesUse::none};
}

RangeRow end_row(const Ranges& start, units::System system) {
    using Kind = search::EndChoice::Kind;
    const auto hardware = [](double force_lb) { return "hardware " + plain(force_lb); };
    const auto force = [system](double value) { return shown(value, units::Kind::force, system); };
    std::vector<std::string> wanted;
    for (const search::EndChoice& choice : start.ends) {
        if (choice.kind == Kind::as_is) wanted.emplace_back("as-is");
        if (choice.kind == Kind::bolted_angles) wanted.emplace_back("angles");
        if (choice.kind == Kind::hardware) wanted.push_back(hardware(choice.force_lb));
    }
    Ticks ticks(wanted);
    ticks.add("as-is", phrase("as in the detail"));
    ticks.add("angles", phrase("bolted angles"));
    for (const search::EndChoice& choice : start.ends) {
        if (choice.kind == Kind::hardware)
            ticks.add(hardware(choice.force_lb), phrase("hardware, {} up and down", force(choice.force_lb)));
    }
    RangeRow row{"ends", phrase("Block ends"), phrase("What joins the blocks to the joists."), ticks.taken(),
                 {},     EntriesUse::last};
    add_run(row, "hardware", phrase("hardware of every force, as typed below"),
            run_entries(Spread{1000.0, 2000.0, 500.0}, units::Kind::force, system));
    return row;
}

}  // namespace toehold::editing
