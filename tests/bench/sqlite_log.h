// SPDX-License-Identifier: GPL-3.0-or-later
// A practice log in SQLite, as lean as it can be: one table without a second index, whole numbers and blobs;
// the kinds of fact that come often have columns of their own, the others are kept as their line.
#pragma once

#include "core/history/fact.h"

#include <memory>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace piolo::bench {

/// Ends the program with SQLite's own words when anything fails.
class SqliteLog {
public:
    /// `journalMode`: wal or delete. Every commit is durable: synchronous=FULL.
    SqliteLog(const std::string& path, const std::string& journalMode);
    ~SqliteLog();
    SqliteLog(const SqliteLog&) = delete;
    SqliteLog& operator=(const SqliteLog&) = delete;

    void begin() { run("BEGIN"); }
    void commit() { run("COMMIT"); }
    /// Outside begin() and commit() a transaction of its own.
    void add(const Fact& fact);
    /// Every fact, in the order in which they were added.
    [[nodiscard]] std::vector<Fact> all();

private:
    void run(const std::string& words);
    void check(int code, int wanted);

    sqlite3* base_ = nullptr;
    sqlite3_stmt* insert_ = nullptr;
};

} // namespace piolo::bench
