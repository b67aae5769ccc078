package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.alg.spanning.KruskalMinimumSpanningTree;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against JGraphT, an independent library for graphs, on random sets of ties. */
final class PairGraphTest {

  private static final double LIMIT = 0.5;

  private static double[][] random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int n = random.nextInt(2, 15);
    double power = random.nextDouble(0.3, 4);
    double[][] weights = new double[n][n];
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < a; b++) {
        weights[a][b] = Math.pow(random.nextDouble(), power);
        weights[b][a] = weights[a][b];
      }
    }
    return weights;
  }

  private static Graph<Integer, DefaultWeightedEdge> tied(double[][] weights, double limit) {
    Graph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    for (int a = 0; a < weights.length; a++) {
      graph.addVertex(a);
      for (int b = 0; b < a; b++) {
        if (weights[a][b] >= limit) {
          graph.setEdgeWeight(graph.addEdge(a, b), 1 - weights[a][b]);
        }
      }
    }
    return graph;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void pieces_are_the_connected_sets(long seed) {
    double[][] weights = random(seed);
    PairGraph graph = new PairGraph(weights, LIMIT);
    Set<Set<Integer>> ours = new HashSet<>();
    graph.pieces().forEach(piece -> ours.add(new HashSet<>(piece)));
    assertThat(ours)
        .isEqualTo(
            new HashSet<>(new ConnectivityInspector<>(tied(weights, LIMIT)).connectedSets()));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_weakest_link_is_the_last_of_the_spanning_tree(long seed) {
    double[][] weights = random(seed);
    Graph<Integer, DefaultWeightedEdge> all = tied(weights, -1);
    double heaviest = 0;
    for (DefaultWeightedEdge edge : new KruskalMinimumSpanningTree<>(all).getSpanningTree()) {
      heaviest = Math.max(heaviest, all.getEdgeWeight(edge));
    }
    assertThat(new PairGraph(weights, LIMIT).weakestLink().orElseThrow().matchable())
        .isCloseTo(1 - heaviest, within(1e-12));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_cuts_are_the_cut_points_of_a_connected_set(long seed) {
    double[][] weights = random(seed);
    Graph<Integer, DefaultWeightedEdge> all = tied(weights, LIMIT);
    Set<Integer> expected =
        new ConnectivityInspector<>(all).isConnected()
            ? new BiconnectivityInspector<>(all).getCutpoints()
            : Set.of();
    assertThat(new PairGraph(weights, LIMIT).cuts())
        .isSorted()
        .containsExactlyInAnyOrderElementsOf(expected);
  }

  /** Of some of the points, as the library says of the graph that has only these. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void some_are_held_if_they_are_connected_without_a_cut_point(long seed) {
    double[][] weights = random(seed);
    SplittableRandom random = new SplittableRandom(~seed);
    boolean[] in = new boolean[weights.length];
    Graph<Integer, DefaultWeightedEdge> some = tied(weights, LIMIT);
    for (int k = 0; k < in.length; k++) {
      in[k] = random.nextInt(5) > 0;
      if (!in[k]) {
        some.removeVertex(k);
      }
    }
    boolean held =
        some.vertexSet().size() > 2
            && new ConnectivityInspector<>(some).isConnected()
            && new BiconnectivityInspector<>(some).getCutpoints().isEmpty();
    PairGraph graph = new PairGraph(weights, LIMIT);
    assertThat(graph.isHeld(in)).isEqualTo(held);
    assertThat(graph.isHeld()).isEqualTo(in.length > 2 && graph.splitters().size() > 1);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_splitters_are_as_few_as_flows_say_and_do_split(long seed) {
    double[][] weights = random(seed);
    PairGraph graph = new PairGraph(weights, LIMIT);
    List<Integer> splitters = graph.splitters();
    assertThat(splitters).hasSize(connectivity(weights)).doesNotHaveDuplicates();
    Graph<Integer, DefaultWeightedEdge> rest = tied(weights, LIMIT);
    rest.removeAllVertices(splitters);
    boolean one = new ConnectivityInspector<>(rest).isConnected();
    assertThat(one && rest.vertexSet().size() > 1).isFalse();
  }

  /** By flows through split points, every pair of points that are not tied (Menger 1927). */
  private static int connectivity(double[][] weights) {
    int n = weights.length;
    SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> net =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    for (int a = 0; a < n; a++) {
      net.addVertex(2 * a);
      net.addVertex(2 * a + 1);
      net.setEdgeWeight(net.addEdge(2 * a, 2 * a + 1), 1);
    }
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        if (a != b && weights[a][b] >= LIMIT) {
          net.setEdgeWeight(net.addEdge(2 * a + 1, 2 * b), 1000);
        }
      }
    }
    int fewest = n - 1;
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < a; b++) {
        if (weights[a][b] < LIMIT) {
          double flow = new PushRelabelMFImpl<>(net).getMaximumFlowValue(2 * a + 1, 2 * b);
          fewest = Math.min(fewest, (int) Math.round(flow));
        }
      }
    }
    return fewest;
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 12, 30, 120})
  void a_ring_tied_neighbour_to_neighbour_splits_at_two(int n) {
    double[][] weights = new double[n][n];
    for (int a = 0; a < n; a++) {
      weights[a][(a + 1) % n] = 1;
      weights[(a + 1) % n][a] = 1;
    }
    PairGraph ring = new PairGraph(weights, LIMIT);
    assertThat(ring.splitters()).hasSize(2);
    assertThat(ring.pieces()).hasSize(1);
    weights[0][1] = 0;
    weights[1][0] = 0;
    assertThat(new PairGraph(weights, LIMIT).splitters()).as("an open row").hasSize(1);
  }

  @Test
  void pieces_come_largest_first() {
    double[][] weights = new double[5][5];
    int[][] ties = {{0, 1}, {2, 3}, {3, 4}};
    for (int[] tie : ties) {
      weights[tie[0]][tie[1]] = 0.9;
      weights[tie[1]][tie[0]] = 0.9;
    }
    PairGraph graph = new PairGraph(weights, LIMIT);
    assertThat(graph.pieces()).isEqualTo(List.of(List.of(2, 3, 4), List.of(0, 1)));
    assertThat(graph.splitters()).isEqualTo(new ArrayList<>());
    assertThat(graph.weakestLink().orElseThrow().matchable()).isZero();
  }
}
