package ringbook.output;

/** Fragments of {@link MadeUpCourse} in the markup that composed lessons use. */
final class MadeUpText {

  static final String OPENING =
      """
      <p>Stand too close and the pot does not fit the frame; stand too far and its speckles are too
      small to hold on to. For your kit the lens must stand
      <data class="quantity" data-key="distance.standoff" value="0.405">40.5 cm</data> from the near
      face, as <a href="course:one-ring#one-ring-count">the third station</a> takes for granted.</p>
      <h2 id="ID-why">Why the distance comes first</h2>
      <p>Everything else hangs on it: sharpness, the number of photographs, the room you need. See
      <a href="course:quantities#distance.standoff">standoff</a> for how it comes about.<sup><a
      href="#ID-fn-1" id="ID-fnref-1">1</a></sup></p>
      <ul><li>Measure from the <em>lens</em>, not from your nose.</li>
      <li>Lay a tape on the table once, then mark the floor.</li></ul>
      <section class="caution"><h3>Caution</h3><p>Tape the cable down where people walk, and keep the
      lamp a hand’s width from anything that can scorch. Follow the rules of the house.</p></section>
      """;

  static final String WORKING =
      """
      <div class="working"><p class="formula"><i>s</i> = <i>f</i> · <i>w</i> / <i>b</i> + <i>f</i></p>
      <p class="numbers">= 6.4 mm × 300 mm / 4.8 mm + 6.4 mm</p>
      <p class="result"><i>s</i> = 40.6 cm</p>
      <ul class="inputs"><li><i>f</i> focal length: 6.4 mm</li><li><i>w</i> width: 30 cm</li></ul></div>
      """;

  static final String MIDDLE =
      """
      <h2 id="ID-count">Work it out</h2>
      <p>The width of the pot and the width of the sensor are seen under the same angle. A formula in
      the line, <svg class="math" style="vertical-align:-0.31em" width="1.2em" height="1em"
      viewBox="0 0 12 10" role="img" aria-label="one half"><path d="M2 0h2v4h-2zM0 5h12v1h-12zM2 7h4v3h-4z"/></svg>,
      sits on it.</p>
      """
          + WORKING
          + """
      <div class="table"><table><caption>Steps round the pot</caption>
      <thead><tr><th scope="col">step</th><th scope="col" class="al-right">photographs</th>
      <th scope="col" class="al-right">overlap of neighbours</th><th scope="col">verdict of the trainer</th></tr></thead>
      <tbody><tr><td>45°</td><td class="al-right">8</td><td class="al-right">0.41</td><td>too few for this surface</td></tr>
      <tr><td>20°</td><td class="al-right">18</td><td class="al-right">0.74</td><td>comfortable</td></tr>
      <tr><td>10°</td><td class="al-right">36</td><td class="al-right">0.87</td><td>more than needed</td></tr></tbody></table></div>
      <section class="try"><h3>Try it</h3><p>Hold a thumb before the lens at the near face, step back until the
      whole pot is in the frame, and measure. You should be within a hand of
      <data class="quantity" data-key="distance.standoff" value="0.405">40.5 cm</data>.</p></section>
      """;

  static final String END =
      """
      <section class="slips"><h3>Slips</h3><ul><li>Taking the distance to the middle of the pot for the
      distance to its face.</li><li>Zooming in because “it looks better”.</li></ul></section>
      <section class="summary"><h3>Card: ID</h3><ol><li>Lens to near face: 40.5 cm.</li><li>Mark the floor
      before you shoot.</li><li>No zoom.</li><li>Leave a finger’s width of frame on every side.</li>
      <li>Check the far face for sharpness.</li><li>Write down what you changed.</li></ol></section>
      <div class="footnotes"><ol><li id="ID-fn-1"><p>Or almost everything. <a
      href="#ID-fnref-1">Back</a></p></li></ol></div>
      """;

  static final String DRAWING =
      """
      <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 360" role="img"
      aria-labelledby="ID-t ID-d"><title id="ID-t">A ring of places</title><desc id="ID-d">A circle with
      ticks</desc><rect class="fig-fill-faint" x="40" y="20" width="24" height="320" fill="#ebe1cf"/>
      <circle class="fig-faint" cx="320" cy="180" r="140" fill="none" stroke="#8a7b69"/>
      <circle class="fig-fill-paper fig-ink" cx="320" cy="180" r="52" fill="#fcf8f0" stroke="#2a241f" stroke-width="2"/>
      <path class="fig-fill-faint" d="M320 50L268 128A74 74 0 0 1 372 128Z" fill="#f0dccc"/>
      <path class="fig-fill-accent" d="M312 32h16v12l-8 14l-8-14z" fill="#95401f"/>
      <path class="fig-second" d="M460 180H372" stroke="#2f5d68" stroke-width="2" fill="none"/>
      <path class="fig-accent" d="M320 180L320 128" stroke="#95401f" stroke-width="2" stroke-dasharray="4 3"/>
      <text class="fig-text" x="380" y="172" font-size="16" fill="#2a241f">40.5 cm</text>
      <text class="fig-text" x="74" y="60" font-size="16" fill="#2a241f">wall</text></svg>
      """;

  private MadeUpText() {}
}
