// Says for each line of standard input, which must hold one plan, what the loader thinks of it: "ok", or the codes of
// all problems. With "schema" as argument: prints the schema.
#include <iostream>
#include <string>

#include "core/plan/file.hpp"

int main(int argc, char** argv)
{
    if (argc == 2 && std::string_view(argv[1]) == "schema") {
        std::cout << loam::plan::schema();
        return 0;
    }
    for (std::string line; std::getline(std::cin, line);) {
        const auto result = loam::plan::read(line);
        if (const auto* const problems = std::get_if<loam::json::Problems>(&result)) {
            for (const auto& problem : *problems) {
                std::cout << problem.code << '@' << problem.where << ' ';
            }
            std::cout << '\n';
        } else {
            std::cout << "ok\n";
        }
    }
    return 0;
}
