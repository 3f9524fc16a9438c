#include "window/complaints.h"

#include <glib.h>

#include <mutex>

namespace toehold::test {

namespace {

std::mutex& guard() {
    static std::mutex mutex;
    return mutex;
}
std::vector<std::string>& kept() {
    static std::vector<std::string> words;
    return words;
}

std::string message(const GLogField* fields, gsize count) {
    std::string words;
    for (const GLogField* field = fields; field != fields + count; ++field) {
        const bool domain = std::string(field->key) == "GLIB_DOMAIN";
        if (!domain && std::string(field->key) != "MESSAGE") continue;
        const auto* text = static_cast<const char*>(field->value);
        words += (domain ? "[" : "") + std::string(text) + (domain ? "] " : " ");
    }
    return words;
}

GLogWriterOutput keep(GLogLevelFlags level, const GLogField* fields, gsize count, gpointer /*nothing*/) {
    constexpr int grave = G_LOG_LEVEL_ERROR | G_LOG_LEVEL_CRITICAL | G_LOG_LEVEL_WARNING;
    if ((level & grave) != 0) complain(message(fields, count));
    return g_log_writer_default(level, fields, count, nullptr);
}

}  // namespace

void listen_for_complaints() { g_log_set_writer_func(keep, nullptr, nullptr); }

void complain(const std::string& words) {
    const std::lock_guard lock(guard());
    kept().push_back(words);
}

std::vector<std::string> complaints() {
    const std::lock_guard lock(guard());
    return kept();
}

}  // namespace toehold::test
