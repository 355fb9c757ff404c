#pragma once

#include <QFont>

class QLabel;

/// How the cards of Learn are written: large, in short lines.
namespace lobewright::ui {

enum class CardText { heading, text, question };

/// Font, wrapping and widest line of a label on a card; its words can be selected.
void writeAsCard(QLabel& label, const QFont& base, CardText kind);

} // namespace lobewright::ui
