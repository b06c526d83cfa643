// SPDX-License-Identifier: GPL-3.0-or-later
// What each kind and each group says of its keys, types and bounds is what the schemas and docs/journal.md
// say.
#include "../../files/scratch_folder.h"
#include "../schema_fields.h"
#include "core/history/fact.h"
#include "journal/passage_file/passage_file.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <map>
#include <utility>

using namespace piolo;
using namespace piolo::test;
using nlohmann::json;

namespace {

const json aName{{"type", "string"}};
const json aNameInAFile{{"type", "string"}, {"maxLength", journal::longestName}};

json fileOf(const std::string& name) {
    return json::parse(contentOf(std::string(PIOLO_SOURCE_DIR) + "/docs/" + name));
}

/// A schema without its references, and without what says more than keys, types and bounds.
class Plain {
public:
    explicit Plain(const std::string& file) : file_(file) {}

    json operator()(json schema) {
        if (schema.contains("$ref")) {
            const json beside = schema;
            schema = referred(schema["$ref"]);
            for (const auto& [key, value] : beside.items())
                if (key != "$ref")
                    value.is_object() ? schema[key].update(value, true) : void(schema[key] = value);
        }
        for (const auto* more : {"pattern", "not", "if", "then"}) schema.erase(more);
        if (schema.value("type", json()) == "object") schema.erase("type");
        for (const auto* one : {"items"})
            if (schema.contains(one)) schema[one] = (*this)(schema[one]);
        for (const auto* many : {"properties", "prefixItems"})
            if (schema.contains(many))
                for (json& inner : schema[many]) inner = (*this)(inner);
        return schema;
    }

private:
    json referred(const std::string& reference) {
        const auto mark = reference.find('#');
        const std::string file = mark == 0 ? file_ : reference.substr(0, mark);
        Plain inside(file);
        return inside(fileOf(file).at(json::json_pointer(reference.substr(mark + 1))));
    }

    std::string file_;
};

/// Texts whose form the schema knows: the reader asks the value itself.
bool narrows(const json& said, const json& described) {
    if (described != aName || !said.contains("enum")) return said == described;
    return std::ranges::all_of(said["enum"], [](const json& word) { return word.is_string(); });
}

void checkSame(const json& said, const json& described) {
    CHECK(said["required"] == described["required"]);
    CHECK(said.value("dependentRequired", json::object()) ==
          described.value("dependentRequired", json::object()));
    for (const auto& [key, property] : described["properties"].items()) {
        INFO(key);
        REQUIRE(said["properties"].contains(key));
        const json& found = said["properties"][key];
        if (property.contains("properties"))
            checkSame(found, property);
        else {
            INFO(found << " and " << property);
            CHECK(narrows(found, property));
        }
    }
    CHECK(said["properties"].size() == described["properties"].size());
}

template <typename Value>
json described(const json& name) {
    Value value{};
    SchemaFields fields(name);
    describe(fields, value);
    return fields.schema();
}

/// Of each kind, by its name.
std::map<std::string, json> describedKinds() {
    std::map<std::string, json> kinds;
    [&]<std::size_t... Index>(std::index_sequence<Index...>) {
        ((kinds[std::string(std::variant_alternative_t<Index, FactBody>::kindName)] =
              described<std::variant_alternative_t<Index, FactBody>>(aName)),
         ...);
    }
    (std::make_index_sequence<kindCount>{});
    return kinds;
}

/// The line of a table in docs/journal.md that begins with that word.
std::string rowOf(const std::string& page, const std::string& word) {
    const auto at = page.find("\n| `" + word + "` ");
    return at == std::string::npos ? "" : page.substr(at + 1, page.find('\n', at + 1) - at - 1);
}

void checkRow(const std::string& page, const std::string& word, const json& said) {
    const std::string row = rowOf(page, word);
    REQUIRE(!row.empty());
    for (const auto& [key, property] : said["properties"].items()) {
        INFO(word << " has " << key);
        const bool isNamed = row.find('`' + key + '`') != std::string::npos;
        CHECK((isNamed || row.find('`' + key + "?`") != std::string::npos));
    }
}

} // namespace

TEST_CASE("the schema of the journal has every kind, and of each its keys, types and bounds") {
    const json schema = fileOf("journal.schema.json");
    const auto kinds = describedKinds();
    REQUIRE(kinds.size() == kindCount);
    CHECK(schema["properties"]["kind"]["enum"].size() == kindCount);
    CHECK(schema["allOf"].size() == kindCount);
    Plain plain("journal.schema.json");
    for (const json& rule : schema["allOf"]) {
        const std::string kind = rule["if"]["properties"]["kind"]["const"];
        INFO(kind);
        REQUIRE(kinds.contains(kind));
        const json& names = schema["properties"]["kind"]["enum"];
        CHECK(std::count(names.begin(), names.end(), kind) == 1);
        checkSame(plain(rule["then"]), kinds.at(kind));
    }
}

TEST_CASE("the schema of passage files has every member of pieces and passages") {
    const json definitions = fileOf("passage.schema.json")["$defs"];
    Plain plain("passage.schema.json");
    const auto withId = [](json said) {
        said["properties"]["id"] = {{"type", "string"}};
        said["required"].insert(said["required"].begin(), "id");
        return said;
    };
    checkSame(plain(definitions["piece"]), withId(described<Piece>(aNameInAFile)));
    checkSame(plain(definitions["passage"]), withId(described<Passage>(aNameInAFile)));
}

TEST_CASE("docs/journal.md has a row for every kind and every group, with all of its keys") {
    const std::string page = contentOf(PIOLO_SOURCE_DIR "/docs/journal.md");
    for (const auto& [kind, said] : describedKinds()) {
        checkRow(page, kind, said);
        if (kind != PassageFact::kindName) continue;
        for (const auto& [group, property] : said["properties"].items())
            if (property.contains("properties")) checkRow(page, group, property);
    }
    CHECK(!rowOf(page, "notation").empty());
}
