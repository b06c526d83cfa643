// SPDX-License-Identifier: GPL-3.0-or-later
// The child that draws pages and decodes pictures: reads a file from standard input, writes the result to
// standard output. See PictureChild.
#include "pictures/picture_child.h"
#include "pictures/picture_limits.h"
#include "pictures/plugin/pdf_functions.h"

#include "files/whole_file.h"

#include <QCoreApplication>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <string_view>
#include <sys/prctl.h>
#include <sys/resource.h>

namespace {

using namespace piolo;
using namespace piolo::pictures;

void limit(__rlimit_resource what, rlim_t most) {
    const rlimit both{most, most};
    if (::setrlimit(what, &both) != 0) std::_Exit(childFailed);
}

/// It writes no file, leaves no core, and ends with the program that started it.
void limitAll() {
    ::prctl(PR_SET_PDEATHSIG, SIGKILL);
#ifndef PIOLO_SANITIZED // a sanitizer reserves far more address space than it uses
    limit(RLIMIT_AS, mostChildBytes);
#endif
    limit(RLIMIT_CPU, mostChildMillis / 1000 + 1);
    limit(RLIMIT_FSIZE, 0);
    limit(RLIMIT_CORE, 0);
}

int say(std::string_view bytes, int code) {
    const bool whole =
        std::fwrite(bytes.data(), 1, bytes.size(), stdout) == bytes.size() && std::fflush(stdout) == 0;
    return whole ? code : childFailed;
}

/// The number and each argument on a line of its own.
int say(const Fault& fault) {
    std::string text = std::to_string(static_cast<int>(fault.number)) + "\n";
    for (const std::string& argument : fault.arguments) text += argument + "\n";
    return say(text, childFault);
}

int work(const std::string& task, int number) {
    auto bytes = files::wholeFile("/dev/stdin", mostBytes + 1);
    if (!bytes) return childFailed;
    const PictureFile file{
        {}, std::move(bytes).value(), task == "jpeg" ? PictureKind::jpeg : PictureKind::png};
    if (task == "count") {
        const auto pages = countPages(file);
        return pages ? say(std::to_string(*pages), EXIT_SUCCESS) : say(pages.fault());
    }
    if (task == "page") {
        const auto page = drawPage(file, number);
        return page ? say(page->bytes, EXIT_SUCCESS) : say(page.fault());
    }
    const auto decoded = decodePicture(file);
    return decoded ? say({}, EXIT_SUCCESS) : say(decoded.fault());
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 3) return childFailed;
    limitAll();
    const QCoreApplication application(argc, argv);
    return work(argv[1], std::atoi(argv[2]));
}
