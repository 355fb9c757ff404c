#include "core/design/schema.h"

#include "core/design/catalogue.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace lobewright::design {

namespace {

using Tree = nlohmann::ordered_json;

Tree asJson(const FieldValue& value) {
    return std::visit(
        [](const auto& held) -> Tree {
            if constexpr (std::is_same_v<std::decay_t<decltype(held)>, std::monostate>) {
                return nullptr;
            } else {
                return held;
            }
        },
        value);
}

Tree described(const Key& key) {
    Tree schema;
    const std::string_view unit = key.unit.symbol;
    schema["title"] =
        unit.empty() ? key.label.english() : fmt::format("{} [{}]", key.label.english(), unit);
    if (!key.help.empty()) {
        schema["description"] = key.help.english();
    }
    return schema;
}

const char* typeName(FieldKind kind) {
    switch (kind) {
    case FieldKind::number:
        return "number";
    case FieldKind::integer:
        return "integer";
    case FieldKind::boolean:
        return "boolean";
    case FieldKind::choice:
    case FieldKind::text:
        break;
    }
    return "string";
}

void addRange(Tree& schema, const Key& key) {
    schema[key.range.minExcluded ? "exclusiveMinimum" : "minimum"] = key.range.min;
    schema[key.range.maxExcluded ? "exclusiveMaximum" : "maximum"] = key.range.max;
}

Tree words(std::span<const Word> given) {
    Tree list = Tree::array();
    for (const Word& word : given) {
        list.push_back(word.key);
    }
    return list;
}

/// The admissible values of one key.
void addValues(Tree& schema, const Scalar& scalar) {
    const bool isNumber = scalar.kind == FieldKind::number || scalar.kind == FieldKind::integer;
    if (isNumber && !scalar.words.empty()) {
        Tree number = {{"type", typeName(scalar.kind)}};
        addRange(number, scalar.key);
        schema["oneOf"] = Tree::array({number, Tree{{"enum", words(scalar.words)}}});
        return;
    }
    if (scalar.kind == FieldKind::choice) {
        schema["enum"] = words(scalar.words);
        return;
    }
    const char* type = typeName(scalar.kind);
    schema["type"] = scalar.nullable ? Tree::array({type, "null"}) : Tree(type);
    if (isNumber) {
        addRange(schema, scalar.key);
    } else if (scalar.kind == FieldKind::text) {
        schema["maxLength"] = static_cast<int>(scalar.key.range.max);
    }
}

class SchemaWriter final : public Visitor {
  public:
    SchemaWriter() { levels_.push_back({&root, {}, {}}); }

    Tree finish() {
        close(levels_.back());
        for (const Tree& rule : rules_) {
            root["allOf"].push_back(rule);
        }
        return std::move(root);
    }

    std::size_t oneOf(std::span<const std::string_view> keys, std::size_t now) override {
        Tree choices = Tree::array();
        for (const std::string_view key : keys) {
            choices.push_back({{"required", Tree::array({key})}});
        }
        (*levels_.back().object)["oneOf"] = choices;
        return now;
    }

    /// Its keys are those of the file itself: the schema points at them.
    void snapshotDesign(Design&) override {
        Tree& object = *levels_.back().object;
        for (const auto& entry : root.at("properties").items()) {
            if (!entry.key().starts_with("format") && entry.key() != "snapshots") {
                object["properties"][entry.key()] = {{"$ref", "#/properties/" + entry.key()}};
            }
        }
        for (const Tree& rule : rules_) {
            object["allOf"].push_back(rule);
        }
        for (const std::string& key : levels_.front().required) {
            if (!key.starts_with("format")) {
                levels_.back().required.push_back(key);
            }
        }
    }

  protected:
    void scalar(const Scalar& scalar) override {
        Tree schema = described(scalar.key);
        addValues(schema, scalar);
        Level& level = levels_.back();
        if (level.object->at("type") == "array") { // a list of numbers
            schema.erase("title");                 // numbered for the entry
            (*level.object)["items"] = schema;
            return;
        }
        if (!isRequired(scalar.key)) {
            schema["default"] = asJson(scalar.value);
        }
        add(scalar.key, std::move(schema));
    }
    void mark(const Key& key, const FieldValue& value) override {
        Tree schema = described(key);
        schema["const"] = asJson(value);
        add(key, std::move(schema));
    }
    bool enter(const Key& key) override {
        open(add(key, container(key, "object")));
        return true;
    }
    void leave() override {
        close(levels_.back());
        levels_.pop_back();
    }
    std::optional<std::size_t> enterList(const Key& key, std::size_t) override {
        Tree schema = container(key, "array");
        schema["minItems"] = static_cast<int>(key.range.min);
        schema["maxItems"] = static_cast<int>(key.range.max);
        levels_.push_back({&add(key, std::move(schema)), {}, {}});
        return 1;
    }
    void leaveList() override { levels_.pop_back(); }
    void enterItem(std::size_t) override {
        Tree& item = (*levels_.back().object)["items"];
        item["type"] = "object";
        open(item);
    }
    void leaveItem() override { leave(); }
    std::optional<std::vector<std::string>> enterEntries(const Key& key,
                                                         std::vector<std::string>) override {
        Tree& object = add(key, container(key, "object"));
        object["propertyNames"] = {{"pattern", "^(/[^/]+)+$"}};
        levels_.push_back({&object, {}, {}});
        return std::vector<std::string>{"*"};
    }
    void leaveEntries() override { levels_.pop_back(); }
    void enterEntry(const std::string&) override {
        Tree& entry = (*levels_.back().object)["additionalProperties"];
        entry["type"] = "object";
        open(entry);
    }
    void leaveEntry() override { leave(); }
    bool isPresent(const Key& key, const PresenceWords& presence, bool) override {
        absent_ = presence.absentIsWord ? Tree(presence.words[0].key) : Tree();
        isOptional_ = true;
        (void)key;
        return true;
    }
    bool enterBranch(const Condition& condition, bool) override {
        levels_.back().branches.push_back({condition, {}, {}});
        levels_.back().isInBranch = true;
        return true;
    }
    void leaveBranch() override { levels_.back().isInBranch = false; }

  private:
    struct Branch {
        Condition condition;
        std::vector<std::string> keys, required;
    };
    struct Level {
        Tree* object;
        std::vector<std::string> required;
        std::vector<Branch> branches;
        bool isInBranch = false;
    };

    Tree container(const Key& key, const char* type) {
        Tree schema = described(key);
        schema["type"] = type;
        return schema;
    }

    void open(Tree& object) {
        levels_.push_back({&object, {}, {}});
        object["additionalProperties"] = false;
        object["required"] = Tree::array();
        object["properties"] = Tree::object();
    }

    /// Puts the schema at the key of the object at hand; returns where it may be filled further.
    Tree& add(const Key& key, Tree schema) {
        Level& level = levels_.back();
        const std::string name(key.name);
        Branch* branch = level.isInBranch ? &level.branches.back() : nullptr;
        if (branch) {
            branch->keys.push_back(name);
        }
        if (isRequired(key)) {
            (branch ? branch->required : level.required).push_back(name);
        }
        Tree& place = (*level.object)["properties"][name];
        const bool isOptional = std::exchange(isOptional_, false);
        if (!isOptional) {
            return place = std::move(schema);
        }
        // Title and help stand once, around both forms.
        for (const char* shared : {"title", "description"}) {
            if (schema.contains(shared)) {
                place[shared] = schema[shared];
                schema.erase(shared);
            }
        }
        if (!isRequired(key)) {
            place["default"] = absent_;
        }
        place["oneOf"] = Tree::array({Tree{{"const", absent_}}, std::move(schema)});
        return place["oneOf"][1];
    }

    static Tree condition(const Tree& object, const Condition& when) {
        const std::string key(when.key);
        if (when.words.empty()) {
            return {{"required", Tree::array({key})}};
        }
        Tree schema = {{"properties", {{key, {{"enum", when.words}}}}}};
        const Tree& selector = object.at("properties").at(key);
        const bool isDefault =
            selector.contains("default") &&
            std::ranges::find(when.words, selector["default"].get<std::string>()) !=
                when.words.end();
        if (!isDefault) {
            schema["required"] = Tree::array({key});
        }
        return schema;
    }

    /// The schema of an object that holds this one at the pointer.
    static Tree nested(std::string_view pointer, Tree schema) {
        while (!pointer.empty()) {
            const std::size_t slash = pointer.rfind('/');
            Tree outer;
            outer["properties"][std::string(pointer.substr(slash + 1))] = std::move(schema);
            schema = std::move(outer);
            pointer = pointer.substr(0, slash);
        }
        return schema;
    }

    /// A condition on another section holds for the whole design.
    void addRule(const Branch& branch, const Tree& unused) {
        const std::string_view key = branch.condition.key;
        const std::string_view section = key.substr(0, key.rfind('/'));
        const std::string_view name = key.substr(section.size() + 1);
        const Tree* selector = &root;
        for (std::string_view rest = key; !rest.empty();) {
            const std::size_t slash = rest.find('/', 1);
            selector = &selector->at("properties").at(std::string(rest.substr(1, slash - 1)));
            rest = slash == std::string_view::npos ? std::string_view() : rest.substr(slash);
        }
        Tree holds = {{"properties", {{name, {{"enum", branch.condition.words}}}}}};
        const bool isDefault =
            std::ranges::find(branch.condition.words, selector->at("default").get<std::string>()) !=
            branch.condition.words.end();
        if (!isDefault) {
            holds["required"] = Tree::array({name});
        }
        Tree rule = {{"if", nested(section, holds)}};
        if (!branch.required.empty()) {
            rule["then"] = nested(path(), {{"required", branch.required}});
        }
        rule["else"] = nested(path(), {{"properties", unused}});
        rules_.push_back(rule);
    }

    void close(Level& level) {
        Tree& object = *level.object;
        object["required"] = level.required;
        if (level.required.empty()) {
            object.erase("required");
        }
        for (const Branch& branch : level.branches) {
            Tree unused = Tree::object();
            for (const std::string& key : branch.keys) {
                unused[key] = false;
            }
            if (branch.condition.key.starts_with('/')) {
                addRule(branch, unused);
                continue;
            }
            Tree rule = {{"if", condition(object, branch.condition)}};
            if (!branch.required.empty()) {
                rule["then"] = {{"required", branch.required}};
            }
            rule["else"] = {{"properties", unused}};
            object["allOf"].push_back(rule);
        }
    }

    Tree root = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                 {"$id", "urn:lobewright:design:1"},
                 {"title", "Lobewright design"},
                 {"type", "object"},
                 {"additionalProperties", false},
                 {"required", Tree::array()},
                 {"properties", Tree::object()}};
    std::vector<Level> levels_;
    std::vector<Tree> rules_; ///< conditions on other sections
    Tree absent_;
    bool isOptional_ = false;
};

} // namespace

std::string designSchema() {
    SchemaWriter writer;
    Design design;
    describe(writer, design);
    return writer.finish().dump(2) + "\n";
}

} // namespace lobewright::design
