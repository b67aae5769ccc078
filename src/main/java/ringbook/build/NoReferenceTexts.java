package ringbook.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.Program;
import org.teavm.model.instructions.AssignInstruction;
import org.teavm.model.instructions.ConstructArrayInstruction;
import org.teavm.model.instructions.IntegerConstantInstruction;
import org.teavm.model.instructions.InvokeInstruction;
import org.teavm.model.instructions.PutElementInstruction;
import org.teavm.model.instructions.StringConstantInstruction;
import org.teavm.model.instructions.UnwrapArrayInstruction;

/**
 * Leaves what the ledger says about its entries (what each means, its source, what proves it) out
 * of the script: no calculation needs it, and the course's data has it for the pages.
 */
public final class NoReferenceTexts implements ClassHolderTransformer {

  private static final String ENTRY = "ringbook.ledger.Entry";
  private static final Set<String> ABOUT = Set.of("meaning", "source", "checkedBy");

  /** A pass. */
  public NoReferenceTexts() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    if (!type.getName().startsWith("ringbook.ledger.")) {
      return;
    }
    for (MethodHolder method : type.getMethods()) {
      if (method.getProgram() != null) {
        leaveOut(method.getProgram());
      }
    }
  }

  private static void leaveOut(Program program) {
    for (BasicBlock block : program.getBasicBlocks()) {
      Instruction next = block.getFirstInstruction();
      while (next != null) {
        Instruction instruction = next;
        next = instruction.getNext();
        if (instruction instanceof InvokeInstruction call && isAbout(call)) {
          leaveOut(call);
        }
      }
    }
  }

  private static boolean isAbout(InvokeInstruction call) {
    return call.getMethod().getClassName().equals(ENTRY)
        && ABOUT.contains(call.getMethod().getName());
  }

  /** The call only hands its entry on; so does an assignment. */
  private static void leaveOut(InvokeInstruction call) {
    leaveOutList(call);
    if (call.getReceiver() == null) {
      call.delete();
      return;
    }
    AssignInstruction same = new AssignInstruction();
    same.setAssignee(call.getInstance());
    same.setReceiver(call.getReceiver());
    same.setLocation(call.getLocation());
    call.replace(same);
  }

  /** The list of texts that is built right before the call, if it takes one. */
  private static void leaveOutList(InvokeInstruction call) {
    List<Instruction> building = new ArrayList<>();
    Instruction before = call.getPrevious();
    while (before != null && buildsList(before)) {
      building.add(before);
      if (before instanceof ConstructArrayInstruction) {
        building.forEach(Instruction::delete);
        return;
      }
      before = before.getPrevious();
    }
  }

  private static boolean buildsList(Instruction instruction) {
    return instruction instanceof ConstructArrayInstruction
        || instruction instanceof PutElementInstruction
        || instruction instanceof UnwrapArrayInstruction
        || instruction instanceof StringConstantInstruction
        || instruction instanceof IntegerConstantInstruction
        || instruction instanceof AssignInstruction;
  }
}
