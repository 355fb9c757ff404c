#include "core/solution/workings/expression.h"

#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

using Kind = FormulaPiece::Kind;

/// Signs longer than a byte, with what they mean.
constexpr std::pair<std::string_view, std::string_view> signs[] = {
    {"·", "*"}, {"−", "-"}, {"²", "²"}, {"³", "³"}};

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
           static_cast<unsigned char>(c) >= 0x80U;
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// The sign at the beginning of the text; empty: none.
std::pair<std::string_view, std::string_view> signAt(std::string_view text) {
    for (const auto& sign : signs) {
        if (text.starts_with(sign.first)) {
            return sign;
        }
    }
    return {};
}

std::size_t symbolLength(std::string_view text) {
    std::size_t length = 0;
    while (length < text.size() && signAt(text.substr(length)).first.empty() &&
           (isLetter(text[length]) || isDigit(text[length]) || text[length] == '_')) {
        ++length;
    }
    return length;
}

/// A formula being read from left to right; the first fault ends it.
class Reader {
  public:
    Reader(std::vector<FormulaPiece> pieces, const Lookup& lookup)
        : pieces_(std::move(pieces)), lookup_(lookup) {}

    Result<double> read() {
        const Quantity value = sum();
        if (fault_.empty() && at_ < pieces_.size()) {
            fault_ = Message(LW_TEXT("\"%1\" follows the end of the formula"), pieces_[at_].text);
        }
        if (fault_.empty() && value.size() != 1) {
            fault_ = LW_TEXT("the result is an array over the revolution, not a number");
        }
        if (fault_.empty() && !std::isfinite(value[0])) {
            fault_ = LW_TEXT("the result is not finite");
        }
        return fault_.empty() ? Result<double>(value[0]) : Problem{"", fault_};
    }

  private:
    static Quantity number(double value) { return Quantity::Constant(1, value); }
    bool isNext(std::string_view text) const {
        return at_ < pieces_.size() && pieces_[at_].text == text;
    }
    bool take(std::string_view text) {
        const bool found = isNext(text);
        at_ += found ? 1 : 0;
        return found;
    }
    Quantity fail(Message why) {
        if (fault_.empty()) {
            fault_ = std::move(why);
        }
        at_ = pieces_.size();
        return number(0.0);
    }
    template <class Operation>
    Quantity combine(const Quantity& a, const Quantity& b, Operation operation) {
        if (a.size() == b.size()) {
            return a.binaryExpr(b, operation);
        }
        if (a.size() == 1) {
            return Quantity::Constant(b.size(), a[0]).binaryExpr(b, operation);
        }
        if (b.size() == 1) {
            return a.binaryExpr(Quantity::Constant(a.size(), b[0]), operation);
        }
        return fail(LW_TEXT("arrays of different shapes meet"));
    }

    Quantity sum() {
        Quantity value = product();
        while (isNext("+") || isNext("-")) {
            const bool isMinus = pieces_[at_++].text == "-";
            const Quantity next = product();
            value = combine(value, next,
                            [isMinus](double a, double b) { return isMinus ? a - b : a + b; });
        }
        return value;
    }

    Quantity product() {
        Quantity value = sign();
        while (isNext("*") || isNext("/")) {
            const bool isOver = pieces_[at_++].text == "/";
            const Quantity next = sign();
            value = combine(value, next,
                            [isOver](double a, double b) { return isOver ? a / b : a * b; });
        }
        return value;
    }

    Quantity sign() {
        if (take("-")) {
            return -sign();
        }
        return power();
    }

    Quantity power() {
        Quantity value = atom();
        if (take("²")) {
            return value.square();
        }
        if (take("³")) {
            return value.cube();
        }
        if (take("^")) {
            const Quantity exponent = sign();
            value = combine(value, exponent, [](double a, double b) { return std::pow(a, b); });
        }
        return value;
    }

    Quantity atom() {
        if (at_ >= pieces_.size()) {
            return fail(LW_TEXT("the formula ends too early"));
        }
        const FormulaPiece piece = pieces_[at_++];
        if (piece.text == "(") {
            Quantity value = sum();
            return take(")") ? value : fail(LW_TEXT("a parenthesis is not closed"));
        }
        if (piece.kind == Kind::number) {
            double value = 0.0;
            std::from_chars(piece.text.data(), piece.text.data() + piece.text.size(), value);
            return number(value);
        }
        if (piece.kind == Kind::function) {
            return call(piece.text);
        }
        if (piece.text == "π") {
            return number(units::pi);
        }
        if (piece.kind == Kind::symbol) {
            const auto value = lookup_(piece.text);
            return value ? *value : fail(Message(LW_TEXT("\"%1\" is not known"), piece.text));
        }
        return fail(Message(LW_TEXT("\"%1\" is in the place of a value"), piece.text));
    }

    Quantity call(const std::string& name) {
        std::vector<Quantity> arguments;
        at_ += 1; // the parenthesis that makes it a function
        do {
            arguments.push_back(sum());
        } while (take(","));
        if (!take(")")) {
            return fail(Message(LW_TEXT("the parenthesis of \"%1\" is not closed"), name));
        }
        return apply(name, arguments);
    }

    Quantity apply(const std::string& name, const std::vector<Quantity>& arguments);
    static Quantity extreme(const std::vector<Quantity>& arguments, bool isMax);
    Quantity elementwise(const std::string& name, const Quantity& x);
    Quantity integral(const std::vector<Quantity>& arguments);
    Quantity runningIntegral(const std::vector<Quantity>& arguments);
    Quantity partIntegral(const std::vector<Quantity>& arguments);

    std::vector<FormulaPiece> pieces_;
    const Lookup& lookup_;
    std::size_t at_ = 0;
    Message fault_;
};

Quantity Reader::apply(const std::string& name, const std::vector<Quantity>& arguments) {
    const std::size_t count = arguments.size();
    if (name == "min" || name == "max") {
        return extreme(arguments, name == "max");
    }
    if (name == "mod" && count == 2) {
        return combine(arguments[0], arguments[1],
                       [](double x, double m) { return x - m * std::floor(x / m); });
    }
    if (name == "wrap" && count == 1) {
        return arguments[0].unaryExpr(
            [](double x) { return x - 360.0 * std::floor(x / 360.0 + 0.5); });
    }
    if (name == "∮" && count == 2) {
        return integral(arguments);
    }
    if (name == "∫" && count == 2) {
        return runningIntegral(arguments);
    }
    if (name == "∫" && count == 4) {
        return partIntegral(arguments);
    }
    return count == 1 ? elementwise(name, arguments[0])
                      : fail(Message(LW_TEXT("\"%1\" of %2 arguments is not known"), name, count));
}

Quantity Reader::elementwise(const std::string& name, const Quantity& x) {
    if (name == "√") {
        return x.sqrt();
    }
    if (name == "abs") {
        return x.abs();
    }
    if (name == "exp") {
        return x.exp();
    }
    if (name == "cos") {
        return (x * units::degree).cos();
    }
    if (name == "sin") {
        return (x * units::degree).sin();
    }
    if (name == "atan") {
        return x.atan() / units::degree;
    }
    return fail(Message(LW_TEXT("\"%1\" is not a function"), name));
}

Quantity Reader::extreme(const std::vector<Quantity>& arguments, bool isMax) {
    constexpr double infinity = std::numeric_limits<double>::infinity();
    double result = isMax ? -infinity : infinity;
    for (const Quantity& argument : arguments) {
        for (const double value : argument) {
            if (!std::isnan(value)) {
                result = isMax ? std::max(result, value) : std::min(result, value);
            }
        }
    }
    return number(result);
}

/// The arrays with gaps as 0.
Quantity whole(const Quantity& values) {
    return values.isNaN().select(0.0, values);
}

Quantity Reader::integral(const std::vector<Quantity>& arguments) {
    const Eigen::Index size = arguments[1].size();
    if (size < 2 || (arguments[0].size() != size && arguments[0].size() != 1)) {
        return fail(LW_TEXT("∮ needs arrays of equal shape"));
    }
    const Quantity y =
        arguments[0].size() == 1 ? Quantity::Constant(size, arguments[0][0]) : whole(arguments[0]);
    const Quantity& x = arguments[1];
    const Quantity step = x.tail(size - 1) - x.head(size - 1);
    return number((0.5 * (y.tail(size - 1) + y.head(size - 1)) * step).sum());
}

Quantity Reader::runningIntegral(const std::vector<Quantity>& arguments) {
    const Quantity y = whole(arguments[0]);
    const Quantity& x = arguments[1];
    if (x.size() < 2 || y.size() != x.size()) {
        return fail(LW_TEXT("∫ needs two arrays of equal shape"));
    }
    Quantity sums = Quantity::Zero(x.size());
    for (Eigen::Index i = 1; i < x.size(); ++i) {
        sums[i] = sums[i - 1] + 0.5 * (y[i] + y[i - 1]) * (x[i] - x[i - 1]);
    }
    return sums;
}

Quantity Reader::partIntegral(const std::vector<Quantity>& arguments) {
    const Quantity y = whole(arguments[0]);
    const Quantity& x = arguments[1];
    if (x.size() < 2 || y.size() != x.size() || arguments[2].size() != 1 ||
        arguments[3].size() != 1) {
        return fail(LW_TEXT("∫ needs two arrays and two bounds"));
    }
    double from = arguments[2][0];
    from -= 360.0 * std::floor(from / 360.0);
    double to = arguments[3][0];
    to -= 360.0 * std::floor((to - from) / 360.0);
    double area = 0.0;
    for (const double shift : {0.0, 360.0}) {
        for (Eigen::Index i = 0; i + 1 < x.size(); ++i) {
            const double a = x[i] + shift, b = x[i + 1] + shift;
            const double low = std::max(a, from), high = std::min(b, to);
            if (high > low) {
                const auto at = [&](double place) {
                    return y[i] + (y[i + 1] - y[i]) * (place - a) / (b - a);
                };
                area += 0.5 * (at(low) + at(high)) * (high - low);
            }
        }
    }
    return number(area);
}

} // namespace

Result<std::vector<FormulaPiece>> pieces(std::string_view formula) {
    std::vector<FormulaPiece> list;
    std::size_t at = 0;
    while (at < formula.size()) {
        const std::string_view rest = formula.substr(at);
        if (rest[0] == ' ') {
            ++at;
        } else if (const auto sign = signAt(rest); !sign.first.empty()) {
            list.push_back({Kind::sign, std::string(sign.second)});
            at += sign.first.size();
        } else if (std::string_view("+-*/^(),").find(rest[0]) != std::string_view::npos) {
            list.push_back({Kind::sign, std::string(1, rest[0])});
            ++at;
        } else if (isDigit(rest[0])) {
            double value = 0.0;
            const auto read = std::from_chars(rest.data(), rest.data() + rest.size(), value);
            const auto length = static_cast<std::size_t>(read.ptr - rest.data());
            list.push_back({Kind::number, std::string(rest.substr(0, length))});
            at += length;
        } else if (isLetter(rest[0])) {
            const std::size_t length = symbolLength(rest);
            const bool isFunction = length < rest.size() && rest[length] == '(';
            list.push_back(
                {isFunction ? Kind::function : Kind::symbol, std::string(rest.substr(0, length))});
            at += length;
        } else {
            return Problem{"", Message(LW_TEXT("\"%1\" is not allowed at the start of a term"),
                                       rest.substr(0, 1))};
        }
    }
    return list;
}

Result<double> evaluate(std::string_view formula, const Lookup& lookup) {
    const auto list = pieces(formula);
    if (!list) {
        return list.problems();
    }
    return Reader(*list, lookup).read();
}

} // namespace lobewright::solution
