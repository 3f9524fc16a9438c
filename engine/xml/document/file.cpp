#include "xml/document/file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/types.h>
#include <unistd.h>

#include <sha256.h>  // needs <sys/types.h>

#include <array>
#include <atomic>
#include <cerrno>
#include <system_error>

namespace toehold::xml {
namespace {

using format::phrase;

std::string reason(int error) { return std::generic_category().message(error); }

/// Closes what it holds.
struct Descriptor {
    int number = -1;
    explicit Descriptor(int opened) : number(opened) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() {
        if (number >= 0) ::close(number);
    }
};

format::Phrase too_large() { return phrase("the file is larger than {} MB", max_document_megabytes); }

/// What is wrong with the thing opened, judged before a byte is read; empty when it can be read.
format::Phrase refusal(int descriptor) {
    struct stat status {};
    if (::fstat(descriptor, &status) != 0) return phrase("cannot be read: {}", reason(errno));
    if (S_ISDIR(status.st_mode)) return phrase("this is a folder, not a file");
    if (!S_ISREG(status.st_mode)) return phrase("this is not a regular file");
    if (status.st_size > static_cast<off_t>(max_document_bytes)) return too_large();
    return {};
}

/// Reads on to the end; an error's message in `failure`. The limit holds for a file that grows meanwhile, too.
std::string read_all(int descriptor, format::Phrase& failure) {
    std::string text;
    std::array<char, 65536> buffer{};
    while (true) {
        const ssize_t count = ::read(descriptor, buffer.data(), buffer.size());
        if (count == 0) return text;
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) {
            failure = phrase("cannot be read: {}", reason(errno));
            return {};
        }
        text.append(buffer.data(), static_cast<std::size_t>(count));
        if (text.size() > max_document_bytes) {
            failure = too_large();
            return {};
        }
    }
}

TextRead failed(const std::filesystem::path& file, const format::Phrase& message) {
    return {{}, {file_problem(file, message)}};
}

/// The stage that failed, and why. A full disk may show only when the data are flushed or the file is closed, so each
/// of these is asked.
struct Failure {
    format::Phrase stage;
    int error = 0;
};

bool write_all(int descriptor, std::string_view text) {
    while (!text.empty()) {
        const ssize_t count = ::write(descriptor, text.data(), text.size());
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return false;
        text.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

std::optional<Failure> write_and_close(int descriptor, std::string_view text) {
    std::optional<Failure> failure;
    if (!write_all(descriptor, text)) {
        failure = Failure{phrase("cannot be written"), errno};
    } else if (::fsync(descriptor) != 0) {
        failure = Failure{phrase("cannot be written to the disk"), errno};
    }
    if (::close(descriptor) != 0 && !failure) failure = Failure{phrase("cannot be closed"), errno};
    return failure;
}

model::Problem refused(const std::filesystem::path& file, const Failure& failure) {
    return file_problem(file, phrase("{}: {}", failure.stage, reason(failure.error)));
}

/// A link is followed, so that saving changes the file it points to and not the link.
std::filesystem::path target_of(const std::filesystem::path& file) {
    std::error_code ignored;
    const std::filesystem::path target = std::filesystem::canonical(file, ignored);
    return ignored ? file : target;
}

/// A name no other save of this or another program uses at the same time.
std::filesystem::path sibling_of(const std::filesystem::path& target) {
    static std::atomic<unsigned> saves{0};
    std::filesystem::path sibling = target;
    sibling += "." + std::to_string(::getpid()) + "-" + std::to_string(++saves) + ".part";
    return sibling;
}

/// To behind its `>`, its own declarations in brackets included.
std::size_t doctype_length(std::string_view text) {
    const std::size_t bracket = text.find_first_of("[>");
    if (bracket == std::string_view::npos) return text.size();
    if (text[bracket] == '>') return bracket + 1;
    const std::size_t closed = text.find(']', bracket);
    const std::size_t end = closed == std::string_view::npos ? closed : text.find('>', closed);
    return end == std::string_view::npos ? text.size() : end + 1;
}

/// The letters of UTF-16 that are ASCII, which is all that a name needs; any other text as it is.
std::string with_plain_letters(std::string text) {
    constexpr std::size_t first_letter = 4;  // a byte order mark and a letter
    if (text.substr(0, first_letter).find('\0') != std::string::npos) std::erase(text, '\0');
    return text;
}

/// Name of the first element; a later fault does not matter, so that a damaged document is still called by its kind.
std::string_view root_name(std::string_view text) {
    while (true) {
        const std::size_t start = text.find('<');
        if (start == std::string_view::npos) return {};
        text.remove_prefix(start);
        if (text.starts_with("<!DOCTYPE")) {
            text.remove_prefix(doctype_length(text));
            continue;
        }
        const bool comment = text.starts_with("<!--");
        if (!comment && !text.starts_with("<?")) break;
        const std::string_view mark = comment ? "-->" : "?>";
        const std::size_t end = text.find(mark, 2);
        if (end == std::string_view::npos) return {};
        text.remove_prefix(end + mark.size());
    }
    text.remove_prefix(1);
    return text.substr(0, text.find_first_of(" \t\r\n/>"));
}

}  // namespace

model::Problem file_problem(const std::filesystem::path& file, const format::Phrase& message) {
    model::Problem problem;
    problem.file = file.string();
    problem.message = message;
    return problem;
}

TextRead read_text(const std::filesystem::path& file) {
    // O_NONBLOCK: opening a pipe nobody writes to would wait for ever.
    const Descriptor opened(::open(file.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY));
    if (opened.number < 0) {
        return failed(
            file, errno == ENOENT ? phrase("there is no such file") : phrase("cannot be opened: {}", reason(errno)));
    }
    if (const format::Phrase message = refusal(opened.number); !message.empty()) return failed(file, message);
    format::Phrase failure;
    std::string text = read_all(opened.number, failure);
    if (!failure.empty()) return failed(file, failure);
    return {std::move(text), {}};
}

std::optional<model::Problem> save_atomically(const std::filesystem::path& file, std::string_view text) {
    const std::filesystem::path target = target_of(file);
    struct stat status {};
    const bool exists = ::stat(target.c_str(), &status) == 0;
    if (exists && !S_ISREG(status.st_mode)) {
        return file_problem(file, phrase("cannot be replaced: it is not a regular file"));
    }
    const std::filesystem::path sibling = sibling_of(target);
    const int descriptor = ::open(sibling.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (descriptor < 0) return refused(file, {phrase("cannot be saved in its folder"), errno});
    std::optional<Failure> failure;
    // A new file keeps the rights just given; a replaced one passes on its own.
    if (exists && ::fchmod(descriptor, status.st_mode & 07777U) != 0) {
        failure = Failure{phrase("cannot be given its permissions"), errno};
    }
    const std::optional<Failure> written = write_and_close(descriptor, text);
    if (!failure) failure = written;
    if (!failure && ::rename(sibling.c_str(), target.c_str()) != 0)
        failure = Failure{phrase("cannot be replaced"), errno};
    if (!failure) return std::nullopt;
    ::unlink(sibling.c_str());
    return refused(file, *failure);
}

std::string sha256(std::string_view text) {
    std::array<char, SHA256_DIGEST_STRING_LENGTH> digest{};
    SHA256_Data(reinterpret_cast<const unsigned char*>(text.data()), text.size(), digest.data());
    return digest.data();
}

std::string root_element(const std::filesystem::path& file) {
    TextRead read = read_text(file);
    if (!read.text) return {};
    return std::string(root_name(with_plain_letters(std::move(*read.text))));
}

DocumentKind document_kind(const std::filesystem::path& file) {
    const std::string name = root_element(file);
    if (name == "base-detail") return DocumentKind::detail;
    if (name == "project") return DocumentKind::project;
    if (name == "plates") return DocumentKind::plates;
    return name == "catalog" ? DocumentKind::catalog : DocumentKind::unknown;
}

}  // namespace toehold::xml
