#pragma once

#include <QString>

#include <vector>

/// The help pages: short texts in Markdown that travel inside the program.
namespace lobewright::ui {

struct HelpPage {
    QString file;  ///< "ports.md"
    QString title; ///< its first heading
    QString group; ///< heading of the contents under which it stands; empty: the contents page
    QString text;  ///< Markdown
};

/// Where a page lies among the resources: that of the language shown, or else the English one.
QString helpPath(const QString& file);

/// In the order of the contents, which are the first one.
const std::vector<HelpPage>& helpPages();
/// Null when there is none of that file name.
const HelpPage* helpPage(const QString& file);
/// Pages that hold all of the words, those with a word in the title first.
std::vector<const HelpPage*> helpPagesWith(const QString& words);

/// The page of a view, by its key; empty when it has none.
/// The page with the first steps in an arrangement; those of the first where it has none.
QString firstStepsIn(const QString& arrangement);
QString helpOfView(const QString& key);
/// The page of a modal dialog, by its object name; empty when it has none.
QString helpOfDialog(const QString& name);
/// The page of an arrangement, by its key.
QString helpOfArrangement(const QString& key);

} // namespace lobewright::ui
