#include "plugin/loader.h"

#include "plugin/adapter.h"
#include "plugin/shared_library_file.h"

#include <dlfcn.h>

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <memory>
#include <set>

namespace toehold::plugin {
namespace {

namespace fs = std::filesystem;
using format::Phrase;
using format::phrase;

constexpr std::size_t most_checks = 1000;

struct Close {
    void operator()(void* library) const { ::dlclose(library); }
};
using Library = std::unique_ptr<void, Close>;

std::string last_error() {
    const char* text = ::dlerror();
    return text ? text : "no reason given";
}

Phrase size_problem(bool same) {
    return same ? Phrase() : phrase("was built with other structures than its version's");
}

Phrase size_problem(const toehold_plugin& table) {
    const toehold_plugin ours = {TOEHOLD_PLUGIN_HEADER, nullptr, nullptr, 0};
    return size_problem(table.plugin_size == ours.plugin_size && table.check_size == ours.check_size &&
                        table.detail_size == ours.detail_size && table.anchor_size == ours.anchor_size &&
                        table.push_size == ours.push_size && table.part_size == ours.part_size &&
                        table.result_size == ours.result_size && table.step_size == ours.step_size);
}

Phrase size_problem(const abi_1::Plugin& table) {
    return size_problem(table.plugin_size == sizeof(abi_1::Plugin) && table.check_size == sizeof(abi_1::Check) &&
                        table.detail_size == sizeof(abi_1::Detail) && table.anchor_size == sizeof(abi_1::Anchor) &&
                        table.push_size == sizeof(abi_1::Push) && table.result_size == sizeof(abi_1::Result) &&
                        table.step_size == sizeof(abi_1::Step));
}

bool is_id(const std::string& id) {
    return !id.empty() && std::all_of(id.begin(), id.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

bool is_registered(const std::string& id) {
    const auto& all = checks::registered_checks();
    return std::any_of(all.begin(), all.end(), [&](const checks::Check& check) { return check.id == id; });
}

template <class Check>
Phrase check_problem(const Check& check, std::set<std::string>& seen) {
    const std::string id = copied_text(check.id);
    if (!is_id(id)) return phrase("has a check without a proper id (lower case letters, digits and hyphens)");
    if (!check.title || !check.clause || !check.covers || !check.run)
        return phrase("leaves parts of its check {} out", id);
    if (is_registered(id) || !seen.insert(id).second) return phrase("brings a check {}, which is there already", id);
    return {};
}

template <class Table>
Phrase table_problem(const Table& table) {
    if (Phrase problem = size_problem(table); !problem.empty()) return problem;
    if (!table.name || !table.checks || table.check_count == 0) return phrase("brings no checks");
    if (table.check_count > most_checks) return phrase("brings more than {} checks", most_checks);
    std::set<std::string> seen;
    for (std::size_t index = 0; index < table.check_count; ++index) {
        if (Phrase problem = check_problem(table.checks[index], seen); !problem.empty()) return problem;
    }
    return {};
}

template <class Table>
LoadedPlugin add_checks(const Table& table) {
    LoadedPlugin loaded{copied_text(table.name), {}};
    for (std::size_t index = 0; index < table.check_count; ++index) {
        checks::Check check = adapt(table.checks[index]);
        loaded.checks.push_back(check.id);
        checks::add_check(std::move(check));
    }
    return loaded;
}

LoadOutcome refuse(const fs::path& file, const Phrase& problem) {
    return {std::nullopt, phrase("plug-in {}: {}", file.string(), problem)};
}

/// All of the table's checks registered, or the reason why none is.
template <class Table>
LoadOutcome take_table(const fs::path& file, const Table& table) {
    if (const Phrase problem = table_problem(table); !problem.empty()) return refuse(file, problem);
    return {add_checks(table), {}};
}

/// Every version's table begins with its number.
LoadOutcome take_any(const fs::path& file, const void* table) {
    std::uint32_t version = 0;
    std::memcpy(&version, table, sizeof version);
    if (version == abi_1::version) return take_table(file, *static_cast<const abi_1::Plugin*>(table));
    if (version == TOEHOLD_PLUGIN_ABI) return take_table(file, *static_cast<const toehold_plugin*>(table));
    return refuse(file, phrase("was built for version {} of the plug-in interface; this program has versions {} to {}",
                               version, abi_1::version, TOEHOLD_PLUGIN_ABI));
}

}  // namespace

LoadOutcome load(const fs::path& file) {
    if (const Phrase problem = library_problem(file); !problem.empty()) return refuse(file, problem);
    std::error_code error;
    // With a path that has a folder the system looks nowhere else.
    const fs::path whole = fs::absolute(file, error);
    if (error) return refuse(file, phrase("cannot be found: {}", error.message()));
    Library library(::dlopen(whole.c_str(), RTLD_NOW | RTLD_LOCAL));
    if (!library) return refuse(file, phrase("cannot be loaded: {}", last_error()));
    void* symbol = ::dlsym(library.get(), TOEHOLD_PLUGIN_ENTRY);
    if (!symbol) return refuse(file, phrase("does not export {}", TOEHOLD_PLUGIN_ENTRY));
    const auto entry = reinterpret_cast<toehold_plugin_entry_function>(symbol);
    const toehold_plugin* table = nullptr;
    try {
        table = entry();
    } catch (...) {
        return refuse(file, phrase("ends in an exception"));
    }
    if (!table) return refuse(file, phrase("gives no table of checks"));
    LoadOutcome outcome = take_any(file, table);
    // Its functions are registered for good.
    if (outcome.plugin) static_cast<void>(library.release());
    return outcome;
}

}  // namespace toehold::plugin
