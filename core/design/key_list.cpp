#include "core/design/key_list.h"

#include "core/design/catalogue.h"

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

/// Walks every branch and one entry of every list.
class KeyCollector final : public Visitor {
  public:
    std::vector<std::string> paths;

  protected:
    void scalar(const Scalar& scalar) override { add(scalar.key.name); }
    void mark(const Key& key, const FieldValue&) override { add(key.name); }
    bool enter(const Key& key) override {
        add(key.name);
        return true;
    }
    std::optional<std::size_t> enterList(const Key& key, std::size_t) override {
        add(key.name);
        return 1;
    }
    std::optional<std::vector<std::string>> enterEntries(const Key& key,
                                                         std::vector<std::string>) override {
        add(key.name);
        return std::vector<std::string>{"*"};
    }
    bool isPresent(const Key&, const PresenceWords&, bool) override { return true; }
    bool enterBranch(const Condition&, bool) override { return true; }

  private:
    void add(std::string_view name) {
        std::string text = pathOf(name);
        for (std::size_t at = text.find("/0"); at != std::string::npos; at = text.find("/0", at)) {
            text[at + 1] = '*';
        }
        paths.push_back(std::move(text));
    }
};

std::vector<std::string> collectPaths() {
    KeyCollector collector;
    Design design;
    describe(collector, design);
    return std::move(collector.paths);
}

} // namespace

const std::vector<std::string>& keyPaths() {
    static const std::vector<std::string> paths = collectPaths();
    return paths;
}

Message sectionOf(std::string_view name) {
    Message home;
    for (const std::string& path : keyPaths()) {
        const std::size_t slash = path.rfind('/');
        if (std::string_view(path).substr(slash + 1) != name ||
            path.starts_with("/snapshots/*/design/")) {
            continue; // a key of a snapshot belongs where it belongs in the file itself
        }
        if (!home.empty()) {
            return {};
        }
        std::string section = path.substr(0, slash);
        if (section.ends_with("/*")) {
            section.resize(section.size() - 2);
        }
        home = slash == 0 ? Message(LW_TEXT("the top level")) : Message(section);
    }
    return home;
}

} // namespace lobewright::design
