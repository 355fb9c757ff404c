#include "core/design/catalogue.h"
#include "core/design/file.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace lobewright::design {

namespace {

using Tree = nlohmann::ordered_json;

class Writer final : public Visitor {
  public:
    Tree root = Tree::object();

  protected:
    void scalar(const Scalar& scalar) override {
        struct {
            Tree operator()(std::monostate) const { return nullptr; }
            Tree operator()(double value) const { return value; }
            Tree operator()(int value) const { return value; }
            Tree operator()(bool value) const { return value; }
            Tree operator()(const std::string& value) const { return value; }
        } const tree;
        const auto* word = std::get_if<std::string>(&scalar.value);
        const bool isNull =
            std::holds_alternative<std::monostate>(scalar.value) || (word && word->empty());
        if (!isNull || scalar.key.writtenWhenNull) {
            put(scalar.key.name, std::visit(tree, scalar.value));
        }
    }
    void mark(const Key& key, const FieldValue& value) override {
        scalar({key, FieldKind::text, false, {}, value, {}});
    }
    bool enter(const Key& key) override {
        nodes_.push_back(&put(key.name, Tree::object()));
        return true;
    }
    void leave() override { nodes_.pop_back(); }
    std::optional<std::size_t> enterList(const Key& key, std::size_t size) override {
        if (size == 0 && !key.writtenWhenNull) {
            return std::nullopt;
        }
        nodes_.push_back(&put(key.name, Tree::array()));
        return size;
    }
    void leaveList() override { nodes_.pop_back(); }
    void enterItem(std::size_t) override { nodes_.push_back(&put({}, Tree::object())); }
    void leaveItem() override { nodes_.pop_back(); }
    std::optional<std::vector<std::string>> enterEntries(const Key& key,
                                                         std::vector<std::string> names) override {
        if (names.empty() && !key.writtenWhenNull) {
            return std::nullopt;
        }
        enter(key);
        return names;
    }
    void leaveEntries() override { leave(); }
    void enterEntry(const std::string& name) override {
        nodes_.push_back(&put(name, Tree::object()));
    }
    void leaveEntry() override { leave(); }
    bool isPresent(const Key& key, const PresenceWords& words, bool now) override {
        if (!now) {
            put(key.name, words.absentIsWord ? Tree(std::string(words.words[0].key)) : Tree());
        }
        return now;
    }

  private:
    Tree& put(std::string_view name, Tree value) {
        Tree& node = *nodes_.back();
        if (node.is_array()) {
            node.push_back(std::move(value));
            return node.back();
        }
        return node[std::string(name)] = std::move(value);
    }

    std::vector<Tree*> nodes_{&root};
};

bool isLeaf(const Tree& node) {
    for (const auto& child : node) {
        if (child.is_structured()) {
            return false;
        }
    }
    return true;
}

void print(std::string& text, const Tree& node, std::size_t indent);

/// `{ "a": 1, "b": 2 }` or `[1, 2]`.
std::string onOneLine(const Tree& node) {
    std::string text;
    for (const auto& entry : node.items()) {
        text += text.empty() ? "" : ", ";
        text += node.is_object() ? fmt::format("{}: ", Tree(entry.key()).dump()) : "";
        print(text, entry.value(), 0);
    }
    return fmt::format(fmt::runtime(node.is_object() ? "{{ {} }}" : "[{}]"), text);
}

/// Sections of single values stand on one line where they fit, like rows of a table.
void print(std::string& text, const Tree& node, std::size_t indent) {
    constexpr std::size_t lineLength = 100;
    if (!node.is_structured() || node.empty()) {
        text += node.dump(-1, ' ', false, Tree::error_handler_t::replace);
        return;
    }
    if (indent > 0 && isLeaf(node)) {
        const std::string line = onOneLine(node);
        if (indent + line.size() <= lineLength) {
            text += line;
            return;
        }
    }
    text += node.is_object() ? "{" : "[";
    const char* separator = "\n";
    for (const auto& entry : node.items()) {
        text += separator;
        text.append(indent + 2, ' ');
        separator = ",\n";
        text += node.is_object() ? fmt::format("{}: ", Tree(entry.key()).dump()) : "";
        print(text, entry.value(), indent + 2);
    }
    text += "\n";
    text.append(indent, ' ');
    text += node.is_object() ? "}" : "]";
}

} // namespace

std::string writeDesign(const Design& design) {
    Writer writer;
    Design shown = design;
    describe(writer, shown);
    std::string text;
    print(text, writer.root, 0);
    return text + "\n";
}

} // namespace lobewright::design
