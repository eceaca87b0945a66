import Aside from './Aside.astro';
import Calculator from './Calculator.astro';
import Caution from './Caution.astro';
import Fact from './Fact.astro';
import OnceMended from './OnceMended.astro';
import Problem from '#components/practice/Problem.astro';
import Rule from './Rule.astro';
import Term from './Term.astro';
import Told from './Told.astro';
import Urgent from './Urgent.astro';
import WhileMended from './WhileMended.astro';
import Worked from './Worked.astro';

/** What lessons and rule cards may name. Content imports nothing: pages hand it these. */
export const contentComponents = { Aside, Calculator, Caution, Fact, Problem, Rule, Term, Urgent, Worked };

/** What the words of a calculator may name: its page shows the calculator itself. */
export const calculatorComponents = { Fact, OnceMended, Rule, Term, Told, Urgent, WhileMended };
