/**
 * The expressions that texts hold, such as {@code ring.photos} or {@code given("aim.step =
 * 72°").pair.shared}: read, and worked out over a scene, alike for lessons, exercises and the
 * browser.
 *
 * <p><b>Notation.</b> Keys of quantities and of the scene's words; behind a quantity {@code .name},
 * {@code .symbol}, {@code .number} (without unit) or {@code .in("mm")}; {@code given("key = value,
 * …")} for a changed scene, in front of a key; {@code length("30 cm")} for a stated length, told in
 * inches where the scene says so, with {@code length("30 cm", "12 in")} in just those; numbers,
 * texts in quotation marks, {@code true}, {@code false}; {@code + - * / %}, comparisons, {@code &&
 * || !}, brackets; behind a yes or no {@code ?then(one, other)}, behind a text {@code ?cap_first},
 * {@code ?uncap_first}, {@code ?lower_case}, {@code ?upper_case}, {@code ?trim}. In sums and
 * comparisons a quantity counts in the unit it is printed in; beside a text it is put in as
 * printed.
 */
package ringbook.values;
