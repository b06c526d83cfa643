// SPDX-License-Identifier: GPL-3.0-or-later
// A practice log in SQLite, as lean as possible: one table without a second index, integers and blobs;
// frequent kinds of fact have columns of their own, all others are stored as their JSON line.
#pragma once

#include "core/history/fact.h"

#include <memory>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace piolo::bench {

/// If anything fails, ends the program with SQLite's error message.
class SqliteLog {
public:
    /// `journalMode`: wal or delete. Every commit is durable: synchronous=FULL.
    SqliteLog(const std::string& path, const std::string& journalMode);
    ~SqliteLog();
    SqliteLog(const SqliteLog&) = delete;
    SqliteLog& operator=(const SqliteLog&) = delete;

    void begin() { run("BEGIN"); }
    void commit() { run("COMMIT"); }
    /// Outside begin() and commit(), each add() is a transaction of its own.
    void add(const Fact& fact);
    /// All facts in the order in which they were added.
    [[nodiscard]] std::vector<Fact> all();

private:
    void run(const std::string& words);
    void check(int code, int wanted);

    sqlite3* base_ = nullptr;
    sqlite3_stmt* insert_ = nullptr;
};

} // namespace piolo::bench
