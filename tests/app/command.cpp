// SPDX-License-Identifier: GPL-3.0-or-later
#include "command.h"

#include "../files/kept_files.h"

#include <algorithm>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace piolo::test {
namespace {

namespace fs = std::filesystem;

struct Streams {
    std::string in = "/dev/null";
    std::string out = "/dev/null";
    std::string err = "/dev/null";
};

void redirect(const std::string& path, int flags, int number) {
    const int file = ::open(path.c_str(), flags, 0600);
    if (file < 0 || ::dup2(file, number) < 0) ::_exit(127);
    ::close(file);
}

int begin(const Args& words, const Streams& streams, const std::map<std::string, std::string>& environment) {
    const int process = ::fork();
    if (process < 0) throw std::runtime_error("fork");
    if (process > 0) return process;
    redirect(streams.in, O_RDONLY, STDIN_FILENO);
    redirect(streams.out, O_WRONLY | O_CREAT, STDOUT_FILENO);
    redirect(streams.err, O_WRONLY | O_CREAT, STDERR_FILENO);
    for (const auto& [name, value] : environment) ::setenv(name.c_str(), value.c_str(), 1);
    std::string program = PIOLO_EXECUTABLE;
    Args copies = words;
    std::vector<char*> arguments{program.data()};
    for (std::string& word : copies) arguments.push_back(word.data());
    arguments.push_back(nullptr);
    ::execv(program.c_str(), arguments.data());
    ::_exit(127);
}

} // namespace

Ended endOf(int process) {
    int status = 0;
    if (::waitpid(process, &status, 0) != process) throw std::runtime_error("waitpid");
    Ended end;
    if (WIFEXITED(status)) end.code = WEXITSTATUS(status);
    if (WIFSIGNALED(status)) end.signal = WTERMSIG(status);
    return end;
}

int beginPiolo(const Args& words) { return begin(words, {}, {}); }

Ended runPiolo(const Args& words, const Around& around) {
    const Scratch scratch;
    Streams streams{around.inputPath, around.outputPath, scratch.path("err")};
    if (streams.in.empty()) streams.in = scratch.put("in", around.input);
    if (streams.out.empty()) streams.out = scratch.path("out");
    Ended end = endOf(begin(words, streams, around.environment));
    if (around.outputPath.empty()) end.out = bytesOf(streams.out);
    end.err = bytesOf(streams.err);
    return end;
}

Scratch::Scratch() {
    std::string name = (fs::temp_directory_path() / "piolo-test-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("mkdtemp");
    folder_ = name;
}

Scratch::~Scratch() {
    std::error_code error;
    keepWritten(folder_);
    fs::remove_all(folder_, error);
}

std::string Scratch::path(const std::string& name) const {
    return name.empty() ? folder_ : folder_ + '/' + name;
}

std::vector<std::string> Scratch::names() const {
    std::vector<std::string> found;
    for (const auto& entry : fs::directory_iterator(folder_))
        found.push_back(entry.path().filename().string());
    std::ranges::sort(found);
    return found;
}

std::string Scratch::put(const std::string& name, const std::string& bytes) const {
    fs::create_directories(fs::path(path(name)).parent_path());
    std::ofstream(path(name), std::ios::binary) << bytes;
    return path(name);
}

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error("cannot open " + path);
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace piolo::test
