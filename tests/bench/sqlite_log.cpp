// SPDX-License-Identifier: GPL-3.0-or-later
#include "sqlite_log.h"

#include "journal/lines/fact_line.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <sqlite3.h>
#include <type_traits>

namespace piolo::bench {

namespace {

constexpr auto table =
    "CREATE TABLE IF NOT EXISTS fact(seq INTEGER PRIMARY KEY, place INTEGER, utc INTEGER, "
    "ahead INTEGER, id BLOB, device TEXT, kind INTEGER, passage BLOB, tempo INTEGER, mark INTEGER, "
    "reason INTEGER, attempt INTEGER, millis INTEGER, more BLOB, line TEXT)";
enum Column {
    seq,
    place,
    utc,
    ahead,
    id,
    device,
    kind,
    passage,
    tempo,
    mark,
    reason,
    attempt,
    millis,
    more,
    line
};
enum Kind : int { runKind, tempoKind, backKind, otherKind };

/// A row being written.
struct Row {
    sqlite3_stmt* into;

    void set(Column column, std::int64_t value) const { sqlite3_bind_int64(into, column + 1, value); }
    void set(Column column, const std::string& text) const {
        sqlite3_bind_text(into, column + 1, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
    }
    void setBytes(Column column, const void* bytes, std::size_t count) const {
        sqlite3_bind_blob(into, column + 1, bytes, static_cast<int>(count), SQLITE_TRANSIENT);
    }
    void set(Column column, const Id& value) const {
        static_assert(std::is_trivially_copyable_v<Id>);
        setBytes(column, &value, sizeof value);
    }
    void set(const RunFact& run) const {
        set(kind, runKind);
        set(passage, run.passage);
        set(tempo, run.tempo.thousandths());
        set(mark, static_cast<int>(run.mark));
        set(reason, static_cast<int>(run.reason));
        set(attempt, static_cast<int>(run.kind));
        set(millis, run.millis);
        static_assert(std::is_trivially_copyable_v<Spot>);
        if (!run.spots.empty()) setBytes(more, run.spots.data(), run.spots.size() * sizeof(Spot));
    }
    void set(const TempoFact& set_) const {
        set(kind, tempoKind);
        set(passage, set_.passage);
        set(tempo, set_.tempo.thousandths());
        set(reason, static_cast<int>(set_.reason));
    }
    void set(const BackFact& back) const {
        set(kind, backKind);
        set(passage, back.passage);
        set(more, back.retracts);
    }
};

/// A row being read.
struct Read {
    sqlite3_stmt* from;

    [[nodiscard]] std::int64_t whole(Column column) const { return sqlite3_column_int64(from, column); }
    [[nodiscard]] std::string text(Column column) const {
        const auto* begin = reinterpret_cast<const char*>(sqlite3_column_text(from, column));
        return {begin, static_cast<std::size_t>(sqlite3_column_bytes(from, column))};
    }
    [[nodiscard]] Id idOf(Column column) const {
        Id value;
        std::memcpy(&value, sqlite3_column_blob(from, column), sizeof value);
        return value;
    }
    [[nodiscard]] Tempo tempoOf() const { return *Tempo::fromThousandths(whole(tempo)); }
    [[nodiscard]] std::vector<Spot> spots() const {
        const auto bytes = static_cast<std::size_t>(sqlite3_column_bytes(from, more));
        std::vector<Spot> found(bytes / sizeof(Spot));
        if (bytes > 0) std::memcpy(found.data(), sqlite3_column_blob(from, more), bytes);
        return found;
    }
    [[nodiscard]] FactBody body() const {
        switch (whole(kind)) {
        case runKind:
            return RunFact{idOf(passage),
                           tempoOf(),
                           static_cast<Mark>(whole(mark)),
                           static_cast<Reason>(whole(reason)),
                           static_cast<RunKind>(whole(attempt)),
                           whole(millis),
                           spots()};
        case tempoKind:
            return TempoFact{idOf(passage), tempoOf(), static_cast<Reason>(whole(reason))};
        default:
            return BackFact{idOf(passage), idOf(more)};
        }
    }
    [[nodiscard]] Fact fact() const {
        if (whole(kind) == otherKind) return *journal::fromLine(text(line), {});
        return {idOf(id),
                text(device),
                static_cast<std::uint64_t>(whole(seq)),
                whole(place),
                {whole(utc), static_cast<std::int16_t>(whole(ahead))},
                body()};
    }
};

} // namespace

SqliteLog::SqliteLog(const std::string& path, const std::string& journalMode) {
    check(sqlite3_open(path.c_str(), &base_), SQLITE_OK);
    run("PRAGMA journal_mode=" + journalMode);
    run("PRAGMA synchronous=FULL");
    run(table);
    check(sqlite3_prepare_v2(base_, "INSERT INTO fact VALUES(?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)", -1, &insert_,
                             nullptr),
          SQLITE_OK);
}

SqliteLog::~SqliteLog() {
    sqlite3_finalize(insert_);
    sqlite3_close(base_);
}

void SqliteLog::add(const Fact& fact) {
    const Row row{insert_};
    row.set(seq, static_cast<std::int64_t>(fact.seq));
    row.set(place, fact.order);
    row.set(utc, fact.at.utcMillis);
    row.set(ahead, fact.at.offsetMinutes);
    row.set(id, fact.id);
    row.set(device, fact.device);
    if (const auto* run = std::get_if<RunFact>(&fact.body))
        row.set(*run);
    else if (const auto* set = std::get_if<TempoFact>(&fact.body))
        row.set(*set);
    else if (const auto* back = std::get_if<BackFact>(&fact.body))
        row.set(*back);
    else {
        row.set(kind, otherKind);
        row.set(line, journal::toLine(fact));
    }
    check(sqlite3_step(insert_), SQLITE_DONE);
    sqlite3_reset(insert_);
    sqlite3_clear_bindings(insert_);
}

std::vector<Fact> SqliteLog::all() {
    sqlite3_stmt* select = nullptr;
    check(sqlite3_prepare_v2(base_, "SELECT * FROM fact ORDER BY seq", -1, &select, nullptr), SQLITE_OK);
    std::vector<Fact> facts;
    int code = sqlite3_step(select);
    for (; code == SQLITE_ROW; code = sqlite3_step(select)) facts.push_back(Read{select}.fact());
    check(code, SQLITE_DONE);
    sqlite3_finalize(select);
    return facts;
}

void SqliteLog::run(const std::string& words) {
    check(sqlite3_exec(base_, words.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
}

void SqliteLog::check(int code, int wanted) {
    if (code == wanted) return;
    std::fprintf(stderr, "SQLite: %s\n", sqlite3_errmsg(base_));
    std::exit(1);
}

} // namespace piolo::bench
