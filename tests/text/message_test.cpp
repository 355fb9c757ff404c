#include "core/text/message.h"

#include <gtest/gtest.h>

using namespace lobewright;

namespace {

/// A language with another order of words, and a unit of length that no table knows.
class Backwards : public MessageReader {
  public:
    std::string amount(const Amount& amount) const override {
        return amount.unit == &in::mm
                   ? withUnit(digitsOf(amount, amount.value / 201.168), "furlong")
                   : MessageReader::amount(amount);
    }

  protected:
    std::string text(TextId id) const override {
        std::string words = id == LW_TEXT("%1 of %2") ? "%2 its %1" : id.text;
        return id == LW_TEXT("%1 of %2") ? words : '<' + std::move(words) + '>';
    }
};

} // namespace

TEST(Message, ReadsAsPlainEnglishInMetricUnits) {
    const Message message{LW_TEXT("%1 is %2, above %3: %4."), LW_TEXT("Peak pressure"),
                          Amount(85.2e5, in::bar), Amount(80e5, in::bar), LW_TEXT("less of it")};
    EXPECT_EQ(message.english(), "Peak pressure is 85.2 bar, above 80 bar: less of it.");
}

TEST(Message, NumbersKeepTheirDigits) {
    EXPECT_EQ(Message(LW_TEXT("%1"), Amount(0.0123456, in::mm)).english(), "12.35 mm");
    EXPECT_EQ(Message(LW_TEXT("%1"), Amount(0.0123456, in::mm, 2)).english(), "12 mm");
    EXPECT_EQ(Message(LW_TEXT("%1"), withDecimals(0.5, in::degrees, 1)).english(), "28.6°");
    EXPECT_EQ(Message(LW_TEXT("%1"), asTyped(82.55, in::mm)).english(), "82.55 mm");
    EXPECT_EQ(Message(LW_TEXT("%1"), number(1e6)).english(), "1e+06");
    EXPECT_EQ(
        Message(LW_TEXT("%1 to %2"), Amount(0.005, in::mm).bare(), Amount(0.008, in::mm)).english(),
        "5 to 8 mm");
}

TEST(Message, PlacesMayStandInAnyOrderAndMessagesInMessages) {
    const Message inner{LW_TEXT("%1 of %2"), LW_TEXT("stroke"), LW_TEXT("piston")};
    EXPECT_EQ(Backwards().read(inner), "<piston> its <stroke>");
    const Message outer{LW_TEXT("%1 of %2"), inner, Amount(201.168, in::mm)};
    EXPECT_EQ(Backwards().read(outer), "1 furlong its <piston> its <stroke>");
}

TEST(Message, WordsOfTheUserAreNeverTakenForPlacesOrTexts) {
    const Message message{LW_TEXT("there is no file %1"), std::string("%1 of %2")};
    EXPECT_EQ(message.english(), "there is no file %1 of %2");
    EXPECT_EQ(Backwards().read(message), "<there is no file %1 of %2>");
}

TEST(Message, JoinsRemarksAndNamesSides) {
    EXPECT_EQ(joined(Message(), LW_TEXT("b")).english(), "b");
    EXPECT_EQ(joined(LW_TEXT("a"), LW_TEXT("b")).english(), "a; b");
    EXPECT_EQ(ofSide(LW_TEXT("Stroke"), End::exhaust).english(), "Stroke, exhaust side");
    EXPECT_TRUE(Message().empty());
    EXPECT_EQ(Message(), Message(""));
    EXPECT_FALSE(Message(LW_TEXT("a")) == Message(LW_TEXT("b")));
}
