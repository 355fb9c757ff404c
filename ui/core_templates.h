#pragma once

#include <QRegularExpression>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// Sentences of the core with places for values, so that a finished sentence is recognised.
namespace lobewright::ui {

/// A format of the core: "the ring stands {:.6g} mm from the crown; …".
class CoreTemplate {
  public:
    explicit CoreTemplate(const QString& format);

    bool hasPlaces() const { return !places_.empty(); }
    /// Everything but the places.
    QString literal() const { return pieces_.join(QString()); }
    qsizetype literalSize() const { return literal().size(); }
    /// The text under which a translation is looked up: places are %1, %2 …
    QString key() const { return key_; }

    /// The values of a sentence that was made with this format, by argument; nothing of another.
    std::optional<QStringList> values(const QString& sentence) const;
    /// Whether a value stands in quotation marks: words of the user, never translated.
    bool isQuoted(qsizetype argument) const;

  private:
    struct Place {
        int argument = 0;
        bool isNumber = false, isQuoted = false;
    };
    std::vector<Place> places_;
    QStringList pieces_; ///< before, between and behind the places
    QString key_;
    QRegularExpression pattern_;
};

/// A format with less text of its own than this would recognise what it never made.
inline constexpr qsizetype leastLiteral = 5;

/// Every format of the core that people read, those that say most first.
const std::vector<CoreTemplate>& coreTemplates();

} // namespace lobewright::ui
