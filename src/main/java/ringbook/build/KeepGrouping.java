package ringbook.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.Program;
import org.teavm.model.Variable;
import org.teavm.model.instructions.AssignInstruction;
import org.teavm.model.instructions.BinaryInstruction;
import org.teavm.model.instructions.BinaryOperation;
import org.teavm.model.instructions.DoubleConstantInstruction;
import org.teavm.model.instructions.NegateInstruction;
import org.teavm.model.instructions.NumericOperandType;
import org.teavm.model.util.DefinitionExtractor;

/**
 * Keeps the brackets of sums and products. The compiler writes {@code a + (b + c)} as {@code a + b
 * + c}, which is another number in its last bits. This pass goes over each sum and product before
 * the compiler does: where the second operand may turn out to be a sum or a product itself, the
 * operands change places if the first is a constant; else the second is negated twice. Both are
 * exact, and both keep the brackets.
 */
public final class KeepGrouping implements ClassHolderTransformer {

  /** A pass. */
  public KeepGrouping() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    for (MethodHolder method : type.getMethods()) {
      if (method.getProgram() != null) {
        keep(method.getProgram());
      }
    }
  }

  private static void keep(Program program) {
    List<BinaryInstruction> sums = new ArrayList<>();
    for (BasicBlock block : program.getBasicBlocks()) {
      for (Instruction instruction : block) {
        if (instruction instanceof BinaryInstruction binary && regroups(binary)) {
          sums.add(binary);
        }
      }
    }
    if (!sums.isEmpty()) {
      Set<Variable> constants = constants(program);
      sums.forEach(sum -> keep(sum, constants));
    }
  }

  private static boolean regroups(BinaryInstruction binary) {
    NumericOperandType type = binary.getOperandType();
    BinaryOperation operation = binary.getOperation();
    return (type == NumericOperandType.DOUBLE || type == NumericOperandType.FLOAT)
        && (operation == BinaryOperation.ADD || operation == BinaryOperation.MULTIPLY);
  }

  private static void keep(BinaryInstruction sum, Set<Variable> constants) {
    Variable first = sum.getFirstOperand();
    Variable second = sum.getSecondOperand();
    if (constants.contains(second)) {
      return;
    }
    if (constants.contains(first)) {
      sum.setFirstOperand(second);
      sum.setSecondOperand(first);
      return;
    }
    sum.setSecondOperand(negated(sum, negated(sum, second)));
  }

  private static Variable negated(BinaryInstruction before, Variable operand) {
    NegateInstruction negate = new NegateInstruction(before.getOperandType());
    negate.setOperand(operand);
    negate.setReceiver(before.getProgram().createVariable());
    negate.setLocation(before.getLocation());
    before.insertPrevious(negate);
    return negate.getReceiver();
  }

  /** The variables that hold one constant and nothing else, directly or by assignment. */
  private static Set<Variable> constants(Program program) {
    Map<Variable, Instruction> definitions = new HashMap<>();
    Set<Variable> unsure = new HashSet<>();
    for (BasicBlock block : program.getBasicBlocks()) {
      block.getPhis().forEach(phi -> unsure.add(phi.getReceiver()));
      for (Instruction instruction : block) {
        DefinitionExtractor extractor = new DefinitionExtractor();
        instruction.acceptVisitor(extractor);
        for (Variable defined : extractor.getDefinedVariables()) {
          if (definitions.put(defined, instruction) != null) {
            unsure.add(defined);
          }
        }
      }
    }
    definitions.keySet().removeAll(unsure);
    Set<Variable> constants = new HashSet<>();
    definitions.forEach(
        (variable, instruction) -> {
          if (isConstant(instruction, definitions)) {
            constants.add(variable);
          }
        });
    return constants;
  }

  private static boolean isConstant(
      Instruction instruction, Map<Variable, Instruction> definitions) {
    Instruction origin = instruction;
    while (origin instanceof AssignInstruction copy) {
      origin = definitions.get(copy.getAssignee());
    }
    return origin instanceof DoubleConstantInstruction;
  }
}
