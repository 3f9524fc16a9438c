#include "xml/text_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace toehold::xml {
namespace {

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

std::string too_large() { return "the file is larger than " + std::to_string(max_document_megabytes) + " MB"; }

/// What is wrong with the thing opened, judged before a byte is read; empty when it can be read.
std::string refusal(int descriptor) {
    struct stat status {};
    if (::fstat(descriptor, &status) != 0) return "cannot be read: " + reason(errno);
    if (S_ISDIR(status.st_mode)) return "this is a folder, not a file";
    if (!S_ISREG(status.st_mode)) return "this is not a regular file";
    if (status.st_size > static_cast<off_t>(max_document_bytes)) return too_large();
    return {};
}

/// Reads on to the end; an error's message in `failure`. The limit holds for a file that grows meanwhile, too.
std::string read_all(int descriptor, std::string& failure) {
    std::string text;
    std::array<char, 65536> buffer{};
    while (true) {
        const ssize_t count = ::read(descriptor, buffer.data(), buffer.size());
        if (count == 0) return text;
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) {
            failure = "cannot be read: " + reason(errno);
            return {};
        }
        text.append(buffer.data(), static_cast<std::size_t>(count));
        if (text.size() > max_document_bytes) {
            failure = too_large();
            return {};
        }
    }
}

TextRead failed(const std::filesystem::path& file, const std::string& message) {
    return {{}, {file_problem(file, message)}};
}

}  // namespace

model::Problem file_problem(const std::filesystem::path& file, const std::string& message,
                            const std::string& accepted) {
    model::Problem problem;
    problem.file = file.string();
    problem.message = message;
    problem.accepted = accepted;
    return problem;
}

TextRead read_text(const std::filesystem::path& file) {
    // O_NONBLOCK: opening a pipe nobody writes to would wait for ever.
    const Descriptor opened(::open(file.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY));
    if (opened.number < 0) {
        return failed(file, errno == ENOENT ? "there is no such file" : "cannot be opened: " + reason(errno));
    }
    if (const std::string message = refusal(opened.number); !message.empty()) return failed(file, message);
    std::string failure;
    std::string text = read_all(opened.number, failure);
    if (!failure.empty()) return failed(file, failure);
    return {std::move(text), {}};
}

}  // namespace toehold::xml
