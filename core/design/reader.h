#pragma once

#include "core/design/catalogue.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace lobewright::design {

/// Fills a design from a JSON tree and collects every problem on the way.
class Reader final : public Visitor {
  public:
    explicit Reader(const nlohmann::json& root);
    /// Reports unknown keys at the top; call after describe().
    Problems finish();

  protected:
    void scalar(const Scalar& scalar) override;
    void mark(const Key& key, const FieldValue& value) override;
    bool enter(const Key& key) override;
    void leave() override;
    std::optional<std::size_t> enterList(const Key& key, std::size_t size) override;
    void leaveList() override { levels_.pop_back(); }
    void enterItem(std::size_t index) override;
    void leaveItem() override { leave(); }
    std::optional<std::vector<std::string>> enterEntries(const Key& key,
                                                         std::vector<std::string> names) override;
    void leaveEntries() override { levels_.pop_back(); }
    void enterEntry(const std::string& name) override;
    void leaveEntry() override { leave(); }
    bool isPresent(const Key& key, const PresenceWords& words, bool now) override;
    bool enterBranch(const Condition& condition, bool applies) override;
    void leaveBranch() override { unused_ = nullptr; }
    std::size_t oneOf(std::span<const std::string_view> keys, std::size_t now) override;
    bool startsEmpty() const override { return true; }
    bool fillsDefaults() const override { return true; }

  private:
    struct Level {
        const nlohmann::json* node = nullptr;
        std::vector<std::string> known; ///< keys that this object may have
        bool isStandIn = false;         ///< for an entry of the wrong type, reported already
    };
    /// The JSON value at the key, or nullptr.
    const nlohmann::json* find(std::string_view name) const;
    /// The same; notes the key as known.
    const nlohmann::json* child(std::string_view name);
    void enterObject(const nlohmann::json& item, const std::string& place);
    bool reportUnused(const Key& key, const nlohmann::json* value);
    void reportMissing(const Key& key);
    void reportUnknownKeys();
    void report(const std::string& path, Message message);

    std::vector<Level> levels_;
    const Condition* unused_ = nullptr; ///< the condition of a branch whose keys are not used
    Problems problems_;
};

} // namespace lobewright::design
