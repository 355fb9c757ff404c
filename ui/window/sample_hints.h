#pragma once

#include <QObject>

#include <optional>
#include <string>

namespace lobewright::ui {

class Document;
class HintBar;

/// Says once what somebody new needs to know: how to begin, what a sample is, and that a design
/// saved out of one still has its words.
class SampleHints : public QObject {
    Q_OBJECT

  public:
    /// `speaksUp` false: only what is asked for is said (pictures).
    SampleHints(Document& document, HintBar& hint, bool speaksUp);

    /// The hint of the first start.
    void greet();
    /// On the first start on this account.
    void greetOnce();
    /// Says once of every sample what it is, and where its notes are.
    void introduceSample();
    /// After the first saving of what began as a sample and still has its title.
    void offerOwnTitle();
    /// What is open is no sample.
    void forget();

  Q_SIGNALS:
    void firstStepsWanted();
    void fieldWanted(const QString& path);
    void saveWanted();

  private:
    Document& document_;
    HintBar& hint_;
    bool speaksUp_;
    bool greets_;                       ///< the first hint comes before what is said of a sample
    std::optional<std::string> sample_; ///< title that the document began with, until it is saved
};

} // namespace lobewright::ui
