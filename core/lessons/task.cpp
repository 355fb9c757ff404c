#include "core/lessons/task.h"

#include "core/lessons/recipes.h"

LW_TEXTS_OF(Core)

namespace lobewright::lessons {

namespace {

std::vector<const Recipe*> allRecipes() {
    std::vector<const Recipe*> all;
    for (const auto group : {predictions(), places(), buildings()}) {
        for (const Recipe& recipe : group) {
            all.push_back(&recipe);
        }
    }
    return all;
}

} // namespace

std::optional<double> figureOf(const solution::Solution& solution, std::string_view name) {
    const auto* figure = solution.figure(name);
    return figure ? figure->value : std::nullopt;
}

std::vector<Task> tasks(const solution::Solution& start) {
    std::vector<Task> told;
    for (const Recipe* recipe : allRecipes()) {
        if (auto task = recipe->tell(start)) {
            task->id = recipe->id;
            task->kind = recipe->kind;
            told.push_back(std::move(*task));
        }
    }
    return told;
}

Result<Verdict> judge(std::string_view id, const Attempt& attempt, Monitor& monitor) {
    for (const Recipe* recipe : allRecipes()) {
        if (recipe->id != id || !recipe->tell(attempt.start)) {
            continue;
        }
        if (recipe->kind == TaskKind::predict && !attempt.guess) {
            return Problem{"", LW_TEXT("Enter your guess first.")};
        }
        return recipe->judge(attempt, monitor);
    }
    return Problem{"", LW_TEXT("This engine has no such task.")};
}

} // namespace lobewright::lessons
